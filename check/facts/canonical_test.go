package facts

import (
	"crypto/sha256"
	"encoding/hex"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestCanonical(t *testing.T) {
	f := &Facts{Schema: Schema, Hoses: []Hose{{ID: "H<1>&"}}}
	text, err := f.JSON()
	require.NoError(t, err)
	assert.Contains(t, string(text), `"id":"H<1>&"`, "nothing is escaped for HTML")
	assert.Contains(t, string(text), `"fluids":[]`)
	assert.Contains(t, string(text), `"defects":[]`, "lists inside lists")
	assert.Contains(t, string(text), `"unsuitable":[]`, "lists inside groups")
	assert.NotContains(t, string(text), "null")
	assert.NotContains(t, string(text), "rated_kpa", "what is not known is left out")
	assert.Nil(t, f.Hoses[0].Defects, "the facts themselves stay as they were")
	assert.Nil(t, f.Fluids)

	f.Hoses[0].RatedKPa, f.Hoses[0].Readable = Know(0), Yes(false)
	text, err = f.JSON()
	require.NoError(t, err)
	assert.Contains(t, string(text), `"rated_kpa":0`, "a known zero is not left out")
	assert.Contains(t, string(text), `"readable":false`)

	sum := sha256.Sum256(text)
	got, err := f.Digest()
	require.NoError(t, err)
	assert.Equal(t, hex.EncodeToString(sum[:]), got)
}
