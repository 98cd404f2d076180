package report

import (
	"bytes"
	"encoding/json"
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestSchemaFileIsFresh(t *testing.T) {
	fresh, err := generateSchema()
	require.NoError(t, err)
	golden(t, "verdict.schema.json", string(fresh))
	if *update {
		return // what is embedded is from before
	}
	assert.Equal(t, string(fresh), string(VerdictSchema()))
	VerdictSchema()[0] = 'x'
	assert.NotEqual(t, byte('x'), VerdictSchema()[0], "a caller cannot spoil it")
}

func TestWhatNarrowsTheSchemaNamesKeysOfTheVerdict(t *testing.T) {
	defs := map[string]any{}
	defs["Verdict"] = define(reflect.TypeFor[Verdict](), defs)
	for name := range narrower {
		of, key, _ := strings.Cut(name, ".")
		require.Contains(t, defs, of)
		assert.Contains(t, defs[of].(map[string]any)["properties"], key)
	}
}

// validator is an independent implementation of JSON Schema draft 2020-12.
func validator(t *testing.T) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(VerdictSchema()))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("verdict.json", doc))
	s, err := c.Compile("verdict.json")
	require.NoError(t, err)
	return s
}

func sample(t *testing.T, name string) map[string]any {
	t.Helper()
	data, err := os.ReadFile("testdata/" + name + ".json")
	require.NoError(t, err)
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	require.NoError(t, err)
	return doc.(map[string]any)
}

func TestVerdictsKeepToTheSchema(t *testing.T) {
	s := validator(t)
	for name := range samples() {
		assert.NoError(t, s.Validate(sample(t, name)), name)
	}
}

func TestTheSchemaRefusesWhatIsNoVerdict(t *testing.T) {
	s := validator(t)
	for key := range sample(t, "fit") {
		doc := sample(t, "fit")
		delete(doc, key)
		optional := key == "governing" || key == "title"
		assert.Equal(t, optional, s.Validate(doc) == nil, key)
	}
	first := func(doc map[string]any, key string) map[string]any { return doc[key].([]any)[0].(map[string]any) }
	for name, spoil := range map[string]func(doc map[string]any){
		"key":      func(doc map[string]any) { doc["other"] = "x" },
		"inner":    func(doc map[string]any) { first(doc, "findings")["other"] = "x" },
		"word":     func(doc map[string]any) { doc["verdict"] = "pass" },
		"date":     func(doc map[string]any) { doc["as_of"] = "25.11.2026" },
		"schema":   func(doc map[string]any) { doc["schema"] = "lineworthy/verdict/2" },
		"digest":   func(doc map[string]any) { doc["digests"].(map[string]any)["rules"] = "abc" },
		"severity": func(doc map[string]any) { first(doc, "findings")["severity"] = "warning" },
		"standing": func(doc map[string]any) { first(first(doc, "findings"), "basis")["standing"] = "heard" },
		"number":   func(doc map[string]any) { first(doc, "cases")["pressure_kpa"] = json.Number("1.5") },
		"list":     func(doc map[string]any) { doc["confirm"] = nil },
		"place": func(doc map[string]any) {
			first(doc, "findings")["position"].(map[string]any)["line"] = json.Number("0")
		},
	} {
		doc := sample(t, "conditional")
		spoil(doc)
		assert.Error(t, s.Validate(doc), name)
	}
}
