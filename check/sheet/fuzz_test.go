package sheet

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// No text crashes the reader; what it refuses has a place in the text and is told on one line each.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{base, string(Template()), "", "---\n", "a: &a [*a]\n", "? [a]\n: b\n", "<<: {a: b}\n", "\uFEFFline: x\r\n",
		"line: !!binary x\n", "\tline: x\n", "line: \"x\n", "runs: {a: {parts: [{kind: hose, bend: }]}}\n", "line: T\n...\nline: U\n"} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		line, err := Parse("t.yaml", data)
		if err == nil {
			require.NotNil(t, line)
			assert.True(t, line.ID.Set)
			assert.NotEmpty(t, line.Runs)
			return
		}
		problems, ok := err.(Problems)
		require.True(t, ok)
		require.NotEmpty(t, problems)
		rows := bytes.Count(data, []byte("\n")) + bytes.Count(data, []byte("\r")) + 1
		for _, p := range problems {
			assert.True(t, p.Line >= 1 && p.Line <= rows && p.Col >= 1, "%s", p)
			assert.False(t, strings.ContainsFunc(p.Error(), func(r rune) bool { return hidden(r) || r == '\n' || r == '\r' }), "%q", p.Error())
		}
	})
}
