package rules

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
)

func TestWhere(t *testing.T) {
	r := Rule{Scope: []string{"carries_ammonia", "!open_point", "kind=relief|check-valve", "!what=body", "line.changed", "regime=ADR|NFPA 58", "!regime=29 CFR 1910.111"}}
	assert.Equal(t, []string{
		"carries ammonia", "not: open point", "kind is relief or check valve", "what is not body", "changed", "the sheet names ADR or NFPA 58",
		"the sheet does not name 29 CFR 1910.111",
	}, r.Where())
	assert.Equal(t, []string{"ADR", "NFPA 58"}, r.Regimes())
	assert.Empty(t, Rule{}.Regimes())
}

// TestEveryRuleCanBeExplained: what it looks at, what it does, an example, and who can supply what it needs.
func TestEveryRuleCanBeExplained(t *testing.T) {
	s, err := Load()
	require.NoError(t, err)
	for _, r := range s.Index() {
		assert.NotEmpty(t, r.LooksAt(), r.ID)
		assert.NotEmpty(t, r.Effect(), r.ID)
		example, err := r.Example()
		require.NoError(t, err)
		assert.NotContains(t, example, "{", r.ID)
		assert.Greater(t, len(example), 10, r.ID)
		for _, n := range r.Asks() {
			assert.NotEmpty(t, n.Fact, r.ID)
		}
	}
	for _, c := range facts.Collections() {
		assert.NotEmpty(t, subjectWords[c], "%s has no words", c)
	}
	_, err = Rule{ID: "a/b"}.Example()
	require.Error(t, err)
}
