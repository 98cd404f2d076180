package decide

import (
	"bytes"
	"context"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

// builtin is the engine with the rules of the program.
func builtin(t testing.TB) (*Engine, rules.Set) {
	t.Helper()
	set, err := rules.Load()
	require.NoError(t, err)
	e, err := New(context.Background(), set)
	require.NoError(t, err)
	return e, set
}

// vocabularyOf are the words that the scopes of the rules ask for, and a few ids, so that made-up facts meet them.
func vocabularyOf(set rules.Set) []string {
	words := []string{"hoses 0", "hoses 1", "parts 0", "joints 0", "x", "ammonia", "NO", "<&>", "é\u2028"}
	for _, r := range set.Index() {
		for _, c := range r.Scope {
			if _, list, ok := strings.Cut(c, "="); ok {
				words = append(words, strings.Split(list, "|")...)
			}
		}
	}
	return words
}

func anyFacts(t *rapid.T, words []string) *facts.Facts {
	return facts.Any(func(n int) int { return rapid.IntRange(0, n-1).Draw(t, "choice") }, words)
}

// TestRulesStayInScope: no facts whatever make a rule report on what it says it does not judge, or anything but words and
// whole numbers. Decide refuses both, so it must never fail.
func TestRulesStayInScope(t *testing.T) {
	e, set := builtin(t)
	words, found := vocabularyOf(set), map[string]bool{}
	rapid.Check(t, func(t *rapid.T) {
		d, err := e.Decide(context.Background(), anyFacts(t, words))
		require.NoError(t, err)
		for _, f := range d.Findings {
			found[f.Rule] = true
		}
	})
	for _, r := range set.Index() {
		if !found[r.ID] {
			t.Logf("%s found nothing on made-up facts", r.ID)
		}
	}
	assert.NotEmpty(t, found)
}

// TestValueIsTheJSON: what the embedded engine gets is what a server would read from the facts as JSON.
func TestValueIsTheJSON(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := anyFacts(t, []string{"a", "NO", "<&>", "é\u2028", ""})
		text, err := f.JSON()
		require.NoError(t, err)
		want, err := ast.ValueFromReader(bytes.NewReader(text))
		require.NoError(t, err)
		assert.Zero(t, ast.Compare(want, value(f)), "%s", text)
	})
}
