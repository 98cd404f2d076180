package rules

import (
	"strings"
	"unicode/utf8"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/format"
)

// widest is the longest line that can still be read beside another file.
const widest = 120

func (l *lint) text() {
	want, err := format.SourceWithOpts(l.Path, []byte(l.Text), format.Opts{RegoVersion: ast.RegoV1})
	if err == nil && string(want) != l.Text {
		l.add(firstDifference(l.Text, string(want)), "not in the standard format: run opa fmt on it")
	}
	for i, line := range strings.Split(l.Text, "\n") {
		if n := utf8.RuneCountInString(line); n > widest {
			l.add(i+1, "the line has %d characters: break it, %d fit", n, widest)
		}
	}
}

func firstDifference(a, b string) int {
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range min(len(x), len(y)) {
		if x[i] != y[i] {
			return i + 1
		}
	}
	return min(len(x), len(y))
}
