package rules

import (
	"bytes"
	"encoding/json"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
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
