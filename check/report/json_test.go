package report

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestJSONIsReadBackAsItWas(t *testing.T) {
	for name, v := range samples() {
		text := written(t, JSON, v, Options{})
		got, err := Read([]byte(text))
		require.NoError(t, err, name)
		assert.Equal(t, text, written(t, JSON, got, Options{}), name)
		assert.Equal(t, written(t, Text, v, Options{Full: true}), written(t, Text, got, Options{Full: true}), name)
		assert.NotContains(t, text, "null", name)
	}
}

func TestJSONKeepsEveryCharacter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := unprovenLine()
		v.Title = rapid.String().Draw(t, "title")
		v.Digests.Catalog = rapid.MapOf(rapid.String(), rapid.String()).Draw(t, "catalog")
		var first, second bytes.Buffer
		if JSON(&first, v, Options{}) != nil || JSON(&second, v, Options{Width: 40, Full: true}) != nil || first.String() != second.String() {
			t.Fatal("the same verdict gives other bytes")
		}
		got, err := Read(first.Bytes())
		if err != nil || got.Title != v.Title || len(got.Digests.Catalog) != len(v.Digests.Catalog) {
			t.Fatalf("%q read as %q: %v", v.Title, got.Title, err)
		}
	})
}

func TestJSONIsPlain(t *testing.T) {
	v := fitLine()
	v.Reason, v.Regimes, v.Digests.Catalog = "a < b & c > d at 45 °C", nil, nil
	text := written(t, JSON, v, Options{})
	assert.Contains(t, text, `"reason": "a < b & c > d at 45 °C"`)
	for _, empty := range []string{`"regimes": []`, `"findings": []`, `"confirm": []`, `"unjudged": []`, `"catalog": {}`} {
		assert.Contains(t, text, empty)
	}
	assert.Nil(t, v.Regimes, "the verdict handed in is left alone")
}

func TestReadTellsEveryFault(t *testing.T) {
	good := written(t, JSON, conditionalLine(), Options{})
	cases := map[string]struct{ old, new, want string }{
		"unknown key":     {`"as_of":`, `"asof":`, "asof: unknown key; did you mean as_of?"},
		"and its absence": {`"as_of":`, `"asof":`, "as_of: missing"},
		"strange key":     {`"as_of":`, `"zzz": 1, "as_of":`, "zzz: unknown key;"},
		"other case":      {`"verdict": "cond`, `"Verdict": "cond`, "Verdict: unknown key"},
		"key twice":       {`"verdict": "cond`, `"verdict": "fit", "verdict": "cond`, "verdict: is there twice"},
		"digest twice":    {`"fluid/butanone":`, `"fluid/butanone": "0", "fluid/butanone":`, "digests.catalog.fluid/butanone: is there twice"},
		"text for list":   {`"unjudged": []`, `"unjudged": "none"`, "unjudged: should be a list, is a text"},
		"null for list":   {`"unjudged": []`, `"unjudged": null`, "unjudged: should be a list, is null"},
		"fraction":        {`"line": 31`, `"line": 31.5`, "findings[0].position.line: should be a whole number, is a number that is not whole"},
		"truth for text":  {`"standing": "published"`, `"standing": true`, "findings[0].basis[0].standing: should be a text, is true or false"},
		"text for truth":  {`"branch": true`, `"branch": "yes"`, "runs[0].parts[1].branch: should be true or false, is a text"},
		"denied word":     {`"verdict": "cond`, `"verdict": "fit`, `"fititional" is no verdict word`},
		"other document":  {`verdict/1"`, `verdict/9"`, `the document is "lineworthy/verdict/9"`},
		"cut off":         {"}\n}\n", "}\n", "this is no JSON: line "},
		"something after": {"}\n}\n", "}\n}\n{}", "this is no JSON: line "},
	}
	for name, c := range cases {
		require.Contains(t, good, c.old, name)
		v, err := Read([]byte(strings.Replace(good, c.old, c.new, 1)))
		assert.ErrorContains(t, err, strings.TrimSuffix(c.want, ";"), name)
		assert.Nil(t, v, name)
	}
}

func TestReadTellsThePlaceOfASlip(t *testing.T) {
	for text, want := range map[string]string{
		"{\n \"a\": 1,\n x}": "line 3, column 2",
		"":                   "line 1, column 0: unexpected end of JSON input",
		"[]":                 "the document: should be an object, is a list",
	} {
		_, err := Read([]byte(text))
		assert.ErrorContains(t, err, want, text)
	}
}

func FuzzReadNeverFalls(f *testing.F) {
	var b bytes.Buffer
	_ = JSON(&b, conditionalLine(), Options{})
	f.Add(b.Bytes())
	f.Add([]byte(`{"findings":[null,{"numbers":{"a":1e99}}],"position":[]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		v, err := Read(data)
		if (v == nil) == (err == nil) {
			t.Fatal("either a verdict or an error")
		}
		if err == nil {
			var out bytes.Buffer
			require.NoError(t, Text(&out, v, Options{}))
			for _, format := range Formats() {
				w, _ := For(format)
				require.NoError(t, w(&out, v, Options{Full: true}))
			}
		}
	})
}
