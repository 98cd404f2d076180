package report

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// plain is the words of a report as its reader gets them, with single spaces.
func plain(t require.TestingT, format, text string) string {
	switch format {
	case "json", "sarif":
		var doc any
		require.NoError(t, json.Unmarshal([]byte(text), &doc))
		text = strings.Join(texts(doc), " ")
	case "html", "junit":
		var b strings.Builder
		d := xml.NewDecoder(strings.NewReader(text))
		for {
			token, err := d.Token()
			if err == io.EOF {
				break
			}
			require.NoError(t, err)
			switch x := token.(type) {
			case xml.CharData:
				b.Write(x)
			case xml.StartElement:
				for _, a := range x.Attr {
					b.WriteString(" " + a.Value + " ")
				}
			}
		}
		text = b.String()
	case "markdown":
		text = strings.ReplaceAll(text, `\`, "")
	}
	return strings.Join(strings.Fields(text), " ")
}

func texts(doc any) (out []string) {
	switch x := doc.(type) {
	case string:
		return []string{x}
	case []any:
		for _, y := range x {
			out = append(out, texts(y)...)
		}
	case map[string]any:
		for _, y := range x {
			out = append(out, texts(y)...)
		}
	}
	return out
}

func TestEveryFindingIsToldInEveryFormat(t *testing.T) {
	words := rapid.StringMatching("[a-zA-Z0-9<>&\"'{}|*_#%$°~;:/`=é-]{1,14}( [a-zA-Z<>&\"'{}|*_]{1,9}){0,6}")
	rapid.Check(t, func(t *rapid.T) {
		v := unfitLine()
		for i := range v.Findings {
			v.Findings[i].Message = words.Draw(t, "message")
			v.Findings[i].Action = words.Draw(t, "action")
		}
		v.Confirm[0].What = words.Draw(t, "what")
		for _, format := range Formats() {
			w, _ := For(format)
			var b bytes.Buffer
			require.NoError(t, w(&b, v, Options{Width: 2000}))
			got := plain(t, format, b.String())
			for _, f := range v.Findings {
				for _, want := range []string{f.Message, f.Action, v.Confirm[0].What} {
					if !strings.Contains(got, want) {
						t.Fatalf("%s leaves out %q:\n%s", format, want, got)
					}
				}
			}
		}
	})
}

func TestEveryFormatGivesTheSameBytesAndTheCautions(t *testing.T) {
	for name, v := range samples() {
		for _, format := range Formats() {
			w, _ := For(format)
			text := written(t, w, v, Options{Width: 2000})
			for range 3 {
				require.Equal(t, text, written(t, w, v, Options{Width: 2000}), name+format)
			}
			for _, want := range append(StandingCautions(), v.Reason, v.Digests.Sheet[:12]) {
				assert.Contains(t, plain(t, format, text), want, name+format)
			}
		}
	}
}

func TestSeveralVerdictsInOneDocument(t *testing.T) {
	two := []*Verdict{fitLine(), unfitLine()}
	for _, format := range Formats() {
		var b bytes.Buffer
		err := All(&b, format, two, Options{})
		if format == "html" {
			assert.ErrorContains(t, err, "one line")
			assert.Empty(t, b.String())
			continue
		}
		require.NoError(t, err, format)
		assert.Contains(t, b.String(), "KD-101")
		assert.Contains(t, b.String(), "KD-103")
		assert.ErrorContains(t, All(&b, format, []*Verdict{nil}, Options{}), "no verdict")
	}
	assert.ErrorContains(t, All(io.Discard, "pdf", two, Options{}), "no report format")
}

func TestADocumentOfAnotherVersionIsNamedFirst(t *testing.T) {
	_, err := Read([]byte(`{"schema": "lineworthy/verdict/2", "new_key": 1}`))
	assert.ErrorContains(t, err, `this program reads "lineworthy/verdict/1": use the program that wrote it (format 2)`)
	assert.NotContains(t, err.Error(), "new_key")
	_, err = Read([]byte(`{"schema": "another/document/2"}`))
	assert.ErrorContains(t, err, "this is no verdict document")
}
