package rules

import (
	"fmt"
	"io/fs"
	"os"
	"path"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
)

// TestPagesAreFresh wants each rule's page to say what the rule says.
func TestPagesAreFresh(t *testing.T) {
	modules, err := read(here)
	require.NoError(t, err)
	for _, l := range inspect(modules) {
		file := path.Join(l.id, "README.md")
		want := page(l, example(t, l))
		if *update {
			require.NoError(t, os.WriteFile(file, []byte(want), 0o644))
		}
		got, err := fs.ReadFile(here, file)
		require.NoError(t, err, "run go test ./rules -update")
		assert.Equal(t, want, string(got), "%s: run go test ./rules -update", file)
	}
}

func page(l *lint, example string) string {
	r, b := l.rule, &strings.Builder{}
	fmt.Fprintf(b, "# %s\n\n`%s` · %s. %s\n\n%s\n", r.Title, r.ID, r.Severity, severityWords[r.Severity], r.Description)
	fmt.Fprintf(b, "\n## What it judges\n\nEach entry of `%s`%s\n", r.Subject, scopeWords(r.Scope))
	fmt.Fprintf(b, "\n## What it says\n\n> %s\n", example)
	fmt.Fprintf(b, "\n## What to do\n\n%s\n", r.Action)
	fmt.Fprintf(b, "\n## Basis\n\n| document | edition | clause | known as |\n|---|---|---|---|\n")
	for _, x := range r.Basis {
		fmt.Fprintf(b, "| %s | %s | %s | %s |\n", x.Document, x.Edition, x.Clause, x.Standing)
	}
	fmt.Fprintf(b, "\n## Facts it reads\n\n")
	for _, f := range l.read {
		fmt.Fprintf(b, "- `%s`%s\n", f, without(l, f))
	}
	return b.String()
}

func scopeWords(scope []string) string {
	if len(scope) == 0 {
		return "."
	}
	return ", where `" + strings.Join(scope, "` and `") + "`."
}

// without says what happens when the fact is not known.
func without(l *lint, path string) string {
	c, key, _ := strings.Cut(path, ".")
	f, _ := facts.Find(c, key)
	ask := ""
	if f.Ask != "" {
		ask = " Supply: " + f.Ask + "."
	}
	for _, n := range l.rule.Needs {
		if n == path {
			return ": without it the rule cannot judge." + ask
		}
	}
	if f.Optional {
		return ": may be missing." + ask
	}
	return ""
}
