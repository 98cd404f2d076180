package sheet

import (
	"reflect"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestTemplateReads(t *testing.T) {
	line := parse(t, string(Template()))
	require.Len(t, line.Runs, 2)
	assert.Len(t, line.Runs[0].V.Parts, 5)
	assert.Len(t, line.Runs[1].V.Parts, 5)
	assert.Equal(t, "3 bar(g)", line.Runs[0].V.Parts[0].Set.Text)
	assert.Equal(t, "cam-groove-en-14420-7", line.Runs[1].V.Parts[1].Inlet.Standard.V)
}

func TestTemplateIsACopy(t *testing.T) {
	Template()[0] = 'x'
	assert.Equal(t, byte('#'), Template()[0])
}

// everyShape visits each kind of mapping a sheet can hold.
func everyShape(t reflect.Type, seen map[reflect.Type]bool) {
	for t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice {
		t = t.Elem()
	}
	if reflect.PointerTo(t).Implements(reflect.TypeFor[named]()) {
		value, _ := t.FieldByName("V")
		t = value.Type
	}
	if t.Kind() != reflect.Struct || seen[t] || formOf(t) == leafForm {
		return
	}
	seen[t] = true
	for _, f := range shapeOf(t).fields {
		everyShape(t.Field(f.index).Type, seen)
	}
}

func shapesOfSheet() map[reflect.Type]bool {
	seen := map[reflect.Type]bool{}
	everyShape(reflect.TypeFor[Line](), seen)
	return seen
}

// Every key and every word is in the template, so the author need not look elsewhere.
func TestTemplateShowsEverything(t *testing.T) {
	text := string(Template())
	for shape := range shapesOfSheet() {
		for _, f := range shapeOf(shape).fields {
			assert.Regexp(t, `(?m)[ {#]`+f.key+`[: ]|^`+f.key+`:`, text, "%s.%s", shape, f.key)
			for _, word := range f.words {
				assert.Regexp(t, `[ \[]`+regexp.QuoteMeta(word)+`[,. \]\n]`, text, "%s.%s: %s", shape, f.key, word)
			}
		}
	}
}

// A note beside a part is only true where the sheet takes what the note offers.
func TestTemplateRemarksRead(t *testing.T) {
	text := string(Template())
	for _, remark := range []string{"room: 400 m3", "conductivity: 5 uS/m", "evidence: supplier data sheet of 2026-01",
		"contains: {fluid: ethanol, concentration: 96 %}", "until: 2027-02-28"} {
		require.Contains(t, text, "# "+remark)
		text = strings.Replace(text, "# "+remark, remark, 1)
	}
	_, err := Parse("template.yaml", []byte(text))
	assert.NoError(t, err)
}

// The examples in the messages can be copied: each reads without a fault of form.
func TestExamplesRead(t *testing.T) {
	for shape := range shapesOfSheet() {
		for i, f := range shapeOf(shape).fields {
			shown := example(&shapeOf(shape).fields[i], shape.Field(f.index).Type)
			assert.NotRegexp(t, `: $|\{\}|\[\]`, shown, "%s.%s has no example", shape, f.key)
			r := &reader{file: "t", line: &Line{Pos: map[string]Pos{}}, told: map[string]bool{}}
			root, problem := document("t", []byte(shown))
			require.Nil(t, problem, shown)
			r.value(root.Content[1], reflect.New(shape).Elem().Field(f.index), &f, place{f.key, Pos{1, 1}})
			assert.Empty(t, r.faults, shown)
		}
	}
}
