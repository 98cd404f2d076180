package rules

import (
	"bytes"
	"encoding/json"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
)

// TestIndexIsFresh wants the index to say what the METADATA of the rules says.
func TestIndexIsFresh(t *testing.T) {
	modules, err := read(here)
	require.NoError(t, err)
	want := encode(t, described(modules))
	if *update {
		require.NoError(t, os.WriteFile(indexFile, want, 0o644))
	}
	got, err := os.ReadFile(indexFile)
	require.NoError(t, err)
	assert.Equal(t, string(want), string(got), "run go test ./rules -update")
}

func encode(t *testing.T, x index) []byte {
	t.Helper()
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "\t")
	require.NoError(t, e.Encode(x))
	return b.Bytes()
}

// TestNeedsSayWhoCanSupplyThem: a verdict that waits for a fact must tell whom to ask.
func TestNeedsSayWhoCanSupplyThem(t *testing.T) {
	modules, err := read(here)
	require.NoError(t, err)
	for _, r := range described(modules).Rules {
		for _, need := range r.Needs {
			collection, key, _ := strings.Cut(need, ".")
			f, ok := facts.Find(collection, key)
			assert.True(t, ok && f.Ask != "", "%s needs %s: the fact has no word on who can supply it", r.ID, need)
		}
	}
}
