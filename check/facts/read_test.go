package facts

import (
	"bytes"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// validator is an independent reading of the schema by the JSON Schema standard, draft 2020-12.
func validator(t require.TestingT) *jsonschema.Schema {
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(JSONSchema()))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("facts.json", doc))
	s, err := c.Compile("facts.json")
	require.NoError(t, err)
	return s
}

func validate(t require.TestingT, s *jsonschema.Schema, text []byte) error {
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	require.NoError(t, err)
	return s.Validate(doc)
}

// one has one hose, one pair and one unknown, to be spoilt.
const one = `{"schema":"lineworthy/facts/1","line":{"id":"L1","as_of_day":20782,"regimes":[],"regimes_without_rules":[],"carries_flammable":false,` +
	`"carries_toxic":false,"carries_corrosive":false,"carries_liquefied_gas":false,"hazard_in_reach":false,"pressurised":true,` +
	`"attended":true,"passive_shutoff":false,"changed":false,"change_record":false,"change_temporary":false,"change_not_in_kind":false},"fluids":[],"hoses":[],` +
	`"services":[],"parts":[],"regulators":[],"capacities":[{"id":"C1","part":"H1","what":"hose","case":"duty","rated_kpa":1600,` +
	`"is_hose":true,"accumulates":false}],"limits":[],"joints":[],"seals":[],"pairs":{"unsuitable":[],"limited":[],"suitable":[{"id":"P1","part":"H1",` +
	`"layer":"liner","contact":"wetted","material":"NBR","fluid":"water","rating":"suitable","effect":"","by_family":false}],` +
	`"unlisted":[]},"bars":[],"meetings":[],"points":[],"cases":[],"sections":[],"surges":[],` +
	`"reliefs":[],"vessels":[],"gauges":[],"flows":[],"releases":[],"tests":[],"test_items":[],"steams":[],"labels":[],"closures":[],"tails":[],"excess_flows":[],"values":[],"unknowns":[]}`

func TestRead(t *testing.T) {
	f, err := Read([]byte(one))
	require.NoError(t, err)
	assert.Equal(t, Know(1600), f.Capacities[0].RatedKPa)
	assert.Equal(t, Int{}, f.Capacities[0].DemandKPa, "left out is not known")
	assert.Equal(t, Yes(true), f.Line.Attended)
	assert.Equal(t, Bool{}, f.Line.RemoteStop)
	text, err := f.JSON()
	require.NoError(t, err)
	assert.Equal(t, one, string(text))
	require.NoError(t, validate(t, validator(t), text))
}

// TestReadRefuses: whatever Rego would pass over in silence. What the schema can say as well, it must.
func TestReadRefuses(t *testing.T) {
	s := validator(t)
	for name, tc := range map[string]struct {
		from, to, want string
		onlyRead       bool // the schema has no word for it
	}{
		"quoted number":       {`1600`, `"1600"`, `capacities[0].rated_kpa: want a whole number`, false},
		"fraction":            {`1600`, `1600.5`, `capacities[0].rated_kpa: 1600.5 is not a whole number`, false},
		"exponent":            {`1600`, `16e2`, `16e2 is not a whole number`, true},
		"beyond 64 bits":      {`1600`, `9223372036854775808`, `of 64 bits`, true},
		"null number":         {`1600`, `null`, `capacities[0].rated_kpa: null is not a fact`, false},
		"null list":           {`"fluids":[]`, `"fluids":null`, `fluids: null is not a fact`, false},
		"null group":          {`"limits":[]`, `"limits":[null]`, `limits[0]: null is not a fact`, false},
		"list for a number":   {`1600`, `[[1],{"a":2}]`, `rated_kpa: want a whole number`, false},
		"group for a word":    {`"what":"hose"`, `"what":{"a":[1]}`, `what: want a word`, false},
		"number for yes":      {`"is_hose":true`, `"is_hose":1`, `is_hose: want true or false`, false},
		"word for yes":        {`"attended":true`, `"attended":"yes"`, `line.attended: want true or false`, false},
		"word for a list":     {`"fluids":[]`, `"fluids":"x"`, `fluids: want a list`, false},
		"list for a group":    {`"limits":[]`, `"limits":[[]]`, `limits[0]: want a group`, false},
		"number in words":     {`"regimes":[]`, `"regimes":[29]`, `line.regimes[0]: want a word`, false},
		"unknown key":         {`"is_hose":true`, `"is_hose":true,"rated_kap":1`, `capacities[0].rated_kap: no such fact here; known are id`, false},
		"key in other case":   {`"is_hose":true`, `"is_hose":true,"Rated_KPa":1`, `Rated_KPa: no such fact`, false},
		"key at the top":      {`"bars":[]`, `"bars":[],"extra":{"x":[1]}`, `extra: no such fact`, false},
		"key twice":           {`"is_hose":true`, `"is_hose":true,"is_hose":false`, `is_hose: stands here twice`, true},
		"required missing":    {`,"is_hose":true`, ``, `capacities[0]: lacks is_hose`, false},
		"group missing":       {`"bars":[],`, ``, `lacks bars`, false},
		"word not in list":    {`"contact":"wetted"`, `"contact":"dry"`, `"dry" is not one of wetted, permeated`, false},
		"empty optional word": {`"rating":"suitable"`, `"rating":""`, `rating: is empty`, false},
		"other schema":        {`facts/1`, `facts/2`, `"lineworthy/facts/2", this program reads`, false},
		"two of one id":       {`"unlisted":[]`, `"unlisted":[` + pairText + `]`, `pairs: two have the id "P1"`, true},
		"something behind":    {`"unknowns":[]}`, `"unknowns":[]} {}`, `follows the end`, true},
	} {
		t.Run(name, func(t *testing.T) {
			bad := strings.Replace(one, tc.from, tc.to, 1)
			require.NotEqual(t, one, bad)
			f, err := Read([]byte(bad))
			require.ErrorContains(t, err, tc.want)
			assert.Nil(t, f)
			if !tc.onlyRead {
				assert.Error(t, validate(t, s, []byte(bad)), "the schema takes it")
			}
		})
	}
}

const pairText = `{"id":"P1","part":"H1","layer":"liner","contact":"wetted","material":"NBR","fluid":"water","effect":"","by_family":false}`

func TestReadBroken(t *testing.T) {
	for i := range len(one) {
		_, err := Read([]byte(one[:i]))
		require.Error(t, err, "cut at %d", i)
	}
	for _, text := range []string{"null", "[]", "1", "{\"schema\":\xff}", one[:len(one)-1] + "]"} {
		_, err := Read([]byte(text))
		assert.Error(t, err, text)
	}
}

// TestReadSaysAllAtOnce: nobody wants to be told of one fault after the other.
func TestReadSaysAllAtOnce(t *testing.T) {
	bad := strings.NewReplacer(`1600`, `"1600"`, `"attended":true`, `"attended":null`, `,"is_hose":true`, ``).Replace(one)
	_, err := Read([]byte(bad))
	require.ErrorContains(t, err, "rated_kpa")
	require.ErrorContains(t, err, "attended")
	require.ErrorContains(t, err, "lacks is_hose")
}

// TestAnyFactsGoRound: what is written can be read, is the same, and is what the schema says.
func TestAnyFactsGoRound(t *testing.T) {
	s := validator(t)
	rapid.Check(t, func(t *rapid.T) {
		f := Any(func(n int) int { return rapid.IntRange(0, n-1).Draw(t, "choice") }, []string{"a", "NO", "<&>", "é\u2028"})
		text, err := f.JSON()
		require.NoError(t, err)
		got, err := Read(text)
		require.NoError(t, err, "%s", text)
		assert.Equal(t, f, got)
		require.NoError(t, validate(t, s, text), "%s", text)
	})
}
