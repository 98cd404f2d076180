package rules

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestLint wants no problem in any rule.
func TestLint(t *testing.T) {
	problems, err := Lint(here)
	require.NoError(t, err)
	for _, p := range problems {
		t.Error(p)
	}
}
