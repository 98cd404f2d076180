package facts

import (
	"flag"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "rewrite the generated schema")

const schemaFile = "../../rules/schema/facts.json"

func TestSchemaFileIsFresh(t *testing.T) {
	if *update {
		require.NoError(t, os.WriteFile(schemaFile, JSONSchema(), 0o644))
	}
	got, err := os.ReadFile(schemaFile)
	require.NoError(t, err)
	assert.Equal(t, string(JSONSchema()), string(got), "run go test ./check/facts -update")
}
