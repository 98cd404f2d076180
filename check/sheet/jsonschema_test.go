package sheet

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
)

var updateSchema = flag.Bool("update", false, "write sheet.schema.json anew")

func TestSchemaIsFresh(t *testing.T) {
	want, err := JSONSchema()
	require.NoError(t, err)
	if *updateSchema {
		require.NoError(t, os.WriteFile("sheet.schema.json", want, 0o644))
	}
	got, err := os.ReadFile("sheet.schema.json")
	require.NoError(t, err)
	require.Equal(t, string(want), string(got), "run go test ./check/sheet -run Schema -update")
}

func compiled(t testing.TB) *jsonschema.Schema {
	t.Helper()
	text, err := JSONSchema()
	require.NoError(t, err)
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("sheet.json", doc))
	s, err := c.Compile("sheet.json")
	require.NoError(t, err)
	return s
}

// asJSON reads YAML as an editor does: a date stays text.
func asJSON(t testing.TB, text string) any {
	t.Helper()
	var n yaml.Node
	require.NoError(t, yaml.Unmarshal([]byte(text), &n))
	var dates func(*yaml.Node)
	dates = func(n *yaml.Node) {
		if n.Tag == "!!timestamp" {
			n.Tag = "!!str"
		}
		for _, c := range n.Content {
			dates(c)
		}
	}
	dates(&n)
	var v any
	require.NoError(t, n.Decode(&v))
	raw, err := json.Marshal(v)
	require.NoError(t, err)
	v, err = jsonschema.UnmarshalJSON(bytes.NewReader(raw))
	require.NoError(t, err)
	return v
}

// TestSchemaTakesShippedSheets: no sheet that is read is flagged in an editor.
func TestSchemaTakesShippedSheets(t *testing.T) {
	s := compiled(t)
	paths, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(paths), 9)
	for _, path := range append(paths, "template.yaml") {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		assert.NoError(t, s.Validate(asJSON(t, string(text))), path)
	}
}

// TestSchemaFlagsSlips: what a hurried writer gets wrong is flagged where it stands, and the reader refuses it too.
func TestSchemaFlagsSlips(t *testing.T) {
	s := compiled(t)
	base, err := os.ReadFile("../../testdata/lines/toluene-yard/line.yaml")
	require.NoError(t, err)
	require.NoError(t, s.Validate(asJSON(t, string(base))))
	for name, tc := range map[string]struct{ old, new, at string }{
		"misspelt key":         {"    filled: 90 %", "    filed: 90 %", "/vessels/returnable"},
		"unknown word":         {"sun: exposed", "sun: sunny", "/site/sun"},
		"pressure of no basis": {"set: 3 bar(g)", "set: 3 bar", "/runs/pad/parts/0/set"},
		"pascal of no basis":   {"set: 3 bar(g)", "set: 300 kPa", "/runs/pad/parts/0/set"},
		"no unit":              {"length: 4 m", "length: 4", "/runs/liquid/parts/1/length"},
		"missing key":          {"      - id: V1\n        kind: valve", "      - id: V1", "/runs/liquid/parts/0"},
		"key of another kind":  {"        closing: 3 s\n        acts_on: hand\n        bonded: yes\n        inlet: {standard: flange-en-1092-1, size: DN 50", "        burst: 40 bar(g)\n        inlet: {standard: flange-en-1092-1, size: DN 50", "/runs/liquid/parts/0/burst"},
		"date of another form": {"made: 2025-02", "made: 02/2025", "/runs/liquid/parts/1/made"},
		"two sources":          {"      vessel: returnable\n      outlet: liquid", "      vessel: returnable\n      supply: 6 bar(g)", "/runs/liquid/source"},
		"list for a value":     {"set: 3 bar(g)", "set: [3 bar(g)]", "/runs/pad/parts/0/set"},
		"neither yes nor no":   {"readable: yes", "readable: maybe", "/runs/pad/parts/2/readable"},
		"bare size":            {"size: DN 50\n        length", "size: 50\n        length", "/runs/liquid/parts/1/size"},
	} {
		t.Run(name, func(t *testing.T) {
			require.Contains(t, string(base), tc.old)
			text := strings.Replace(string(base), tc.old, tc.new, 1)
			_, readErr := Parse("line.yaml", []byte(text))
			require.Error(t, readErr, "the reader takes it")
			err := s.Validate(asJSON(t, text))
			require.Error(t, err)
			assert.Contains(t, err.Error(), tc.at)
		})
	}
}

// TestSchemaTakesEverySpelling: what the reader takes is never flagged.
func TestSchemaTakesEverySpelling(t *testing.T) {
	for typ, texts := range map[string][]string{
		"units.Pressure": {"6 bar(g)", "87 psig", "6bar g", "600 kPa (gauge)", "-0.5 bar(g)", "−0.5 bar(g)", "0.6 MPa(a)", "7 barabs", "14.7 psia", "6 BAR(G)", "100 lbf/in² g",
			"6 kgf/cm2(g)", "6 kgf/cm²(g)", "1013 hPa(a)", "1e2 kPa(g)", ".5 bar(g)", "30 inHg(a)", "6 bar[g]", "6 bar absolute", "6 bar-g"},
		"units.Temperature":     {"20 °C", "68 F", "293.15 K", "20 degC", "20 deg. C", "-5°C", "20 ℃", "20 celsius", "68 fahrenheit", "293 kelvin", "−5 °C"},
		"units.Length":          {"3 m", "150mm", "1 1/2 in", `3/4"`, "½ in", "5 ft", "12'"},
		"units.Size":            {"DN 50", "dn50", "NPS 1 1/2", "-16", "dash 16", "25 mm", "1 1/2 in", `1"`, "½ in"},
		"units.FlowCoefficient": {"Cv 0.06", "Kv = 0.05", "0.06 Cv", "Kvs 1.2"},
		"units.Fraction":        {"85 %", "0.85", "50 ppm", "85 percent", "3 ‰"},
		"units.Date":            {"2026-11-25", "2024-03"},
		"units.Months":          {"12 months", "5 years", "1 year"},
		"units.Time":            {"2 s", "20 min", "1 h"},
		"units.Resistance":      {"10 ohm", "1 Mohm", "20 kΩ", "20 kohm"},
		"units.Conductivity":    {"50 pS/m", "2 µS/cm", "2 uS/cm"},
		"units.Volume":          {"1000 L", "264 US gal", "1 m³"},
		"units.Area":            {"50 mm2", "50 mm²", "0.08 sq in"},
		"units.VolumeFlow":      {"3 m3/h", "13 US gal/min"},
		"units.Force":           {"120 N", "1.2 kN", "30 lbf"},
		"int":                   {"2"},
		"float64":               {"0.7", "1"},
	} {
		found := false
		for rt, how := range valueTypes {
			if rt.String() != typ {
				continue
			}
			found = true
			s := compiledPattern(t, leafForms[rt].pattern)
			for _, text := range append(texts, how.example) {
				_, err := how.parse(text)
				require.NoError(t, err, text)
				assert.NoError(t, s.Validate(text), "%s %s", typ, text)
			}
		}
		assert.True(t, found, typ)
	}
}

func compiledPattern(t testing.TB, pattern string) *jsonschema.Schema {
	t.Helper()
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("p.json", map[string]any{"type": "string", "pattern": pattern}))
	s, err := c.Compile("p.json")
	require.NoError(t, err)
	return s
}

// TestEveryKeyIsExplained: an editor says of each key what it is for, and of nothing else.
func TestEveryKeyIsExplained(t *testing.T) {
	known := map[string]bool{}
	var walk func(reflect.Type)
	walk = func(typ reflect.Type) {
		for typ.Kind() == reflect.Pointer || typ.Kind() == reflect.Slice {
			typ = typ.Elem()
		}
		if v, ok := typ.FieldByName("V"); ok && strings.HasPrefix(typ.Name(), "Named[") {
			typ = v.Type
		}
		for _, f := range shapeOf(typ).fields {
			known[typ.Name()+"."+f.key] = true
			assert.NotEmpty(t, schemaNotes[typ.Name()+"."+f.key], "%s.%s: say in schemaNotes what it is for", typ.Name(), f.key)
			ft := typ.Field(f.index).Type
			for ft.Kind() == reflect.Pointer || ft.Kind() == reflect.Slice {
				ft = ft.Elem()
			}
			if formOf(ft) != leafForm {
				walk(ft)
			}
		}
	}
	walk(reflect.TypeFor[Line]())
	for rt := range valueTypes {
		assert.NotEmpty(t, leafForms[rt].types, "%s: say in leafForms how it is written", rt)
	}
	if len(known) < 140 {
		t.Errorf("only %d keys seen", len(known))
	}
}
