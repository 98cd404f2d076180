package resolve_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// base is an invented line in which every kind of name is used once.
const base = `line: T-1
site: {lowest: 0 °C, highest: 40 °C}
fluids:
  product: {fluid: MEK, concentration: 100 %, temperature: {highest: 30 °C}}
  pad: {fluid: nitrogen}
  gas: {fluid: chlorine-wet, role: previous}
  hot: {fluid: water, temperature: {highest: 65.1 °C}}
vessels:
  drum:
    material: S31603
    points:
      bung: {standard: thread-g, size: 1 in}
  tank:
    contains: {fluid: ethanol, concentration: 96 %}
    points:
      fill: {standard: thread-g, size: 1 in, material: PP}
runs:
  liquid:
    carries: [product, pad]
    source: {vessel: drum, outlet: bung}
    to: {vessel: tank, inlet: fill}
    parts:
      - id: H1
        kind: hose
        class: en-12115-sd
        layers: {liner: PTFE}
        inlet: {standard: thread-g, size: 1 in, seal: {kind: ptfe-sheet}}
      - {id: G1, kind: gauge, material: S31603, wetted: [FKM-1], mount: {standard: thread-npt}}
      - {id: W1, kind: weight}
      - {id: V1, kind: valve, material: S31603}
nearby: [{vessel: tank, point: fill}]
evidence: [{material: PTFE, fluid: butanone, rating: suitable, highest: 60 °C, document: letter}]
`

var cat = catalog.Open()

func parse(t *testing.T, edits ...string) *sheet.Line {
	t.Helper()
	text := base
	for i := 0; i < len(edits); i += 2 {
		require.Contains(t, text, edits[i])
		text = strings.ReplaceAll(text, edits[i], edits[i+1])
	}
	s, err := sheet.Parse("t.yaml", []byte(text))
	require.NoError(t, err)
	return s
}

func line(t *testing.T, edits ...string) *resolve.Line {
	t.Helper()
	l, err := resolve.Resolve(parse(t, edits...), cat, resolve.Options{AsOf: units.Date{Days: 20782}})
	require.NoError(t, err)
	return l
}

func TestNames(t *testing.T) {
	l := line(t)
	assert.Equal(t, "butanone", l.Fluids[0].Cat.ID, "found by another name")
	assert.Equal(t, []string{"product", "pad", "previous", "product"}, []string{l.Fluids[0].Role, l.Fluids[1].Role, l.Fluids[2].Role, l.Fluids[3].Role})
	assert.Equal(t, "chlorine", l.Fluids[2].Props.ID, "its properties are another fluid's")
	assert.Contains(t, l.Fluids[3].Services, "hot-water")
	assert.NotContains(t, line(t, "65.1 °C", "65 °C").Fluids[3].Services, "hot-water")
	assert.Equal(t, "contents", l.Vessels[1].Contents.Role)
	assert.InDelta(t, 0.96, float64(*l.Vessels[1].Contents.Strength), 1e-9)
	assert.Equal(t, units.Date{Days: 20782}, l.AsOf)
	assert.Equal(t, "letter", l.Evidence[0].Sheet.Document.V)
	assert.Equal(t, "tank/fill", l.Nearby[0].ID)
	assert.Equal(t, "EN 12115", l.Runs[0].Parts[0].Hose.Standard)
}

// TestTemperatures: the fluid's own where they are written, else those of the place, else unknown.
func TestTemperatures(t *testing.T) {
	l := line(t)
	assert.Equal(t, []units.Temperature{303.15, 273.15}, []units.Temperature{*l.Fluids[0].Hottest, *l.Fluids[0].Lowest})
	assert.Equal(t, units.Temperature(313.15), *l.Fluids[1].Hottest)
	l = line(t, "site: {lowest: 0 °C, highest: 40 °C}\n", "")
	assert.Nil(t, l.Fluids[1].Hottest)
	assert.Nil(t, l.Fluids[0].Lowest)
	assert.Nil(t, l.Vessels[1].Contents.Hottest)
}

// TestAmbient by ISO 2533 (recalled): 89 874.6 Pa at 1000 m. Nothing said is sea level.
func TestAmbient(t *testing.T) {
	assert.InDelta(t, 101325, float64(line(t).Ambient), 1e-6)
	assert.InDelta(t, 89874.6, float64(line(t, "highest: 40 °C}\nfluids", "highest: 40 °C, altitude: 1000 m}\nfluids").Ambient), 1)
}

// TestJoints: parts in the flow meet their neighbours, a branch part its mount, and a weight nothing.
func TestJoints(t *testing.T) {
	var ids []string
	for _, j := range line(t).Runs[0].Joints {
		ids = append(ids, j.ID)
	}
	assert.Equal(t, []string{"drum.bung to H1.inlet", "G1.mount to G1.inlet", "H1.outlet to V1.inlet", "V1.outlet to tank.fill"}, ids)
	l := line(t)
	first := l.Runs[0].Joints[0]
	assert.True(t, first.Stated)
	assert.Equal(t, "PTFE", first.Seals[0].Material.ID, "the one material of its kind")
	assert.NotEmpty(t, l.Rows["materials/PTFE"])
	assert.False(t, l.Runs[0].Joints[3].Stated)
	assert.Equal(t, "S31603", first.A.Material.ID, "a point is of its vessel's material")
	assert.Equal(t, "PP", l.Runs[0].Joints[3].B.Material.ID, "unless it says otherwise")
	assert.Nil(t, l.Runs[0].Joints[2].A.Material, "a hose end says what it is made of")
}

// TestLayers: what is stated, what the class leaves open, and a liner always.
func TestLayers(t *testing.T) {
	at := func(edits ...string) map[string]string {
		out := map[string]string{}
		for _, l := range line(t, edits...).Runs[0].Parts[0].Layers {
			out[l.Role] = "open"
			if l.Material != nil {
				out[l.Role] = l.Material.ID
			}
		}
		return out
	}
	assert.Equal(t, map[string]string{"liner": "PTFE", "reinforcement": "open", "cover": "open"}, at())
	assert.Equal(t, map[string]string{"liner": "open"}, at("        class: en-12115-sd\n        layers: {liner: PTFE}\n", ""))
	assert.Equal(t, "S31603", at("class: en-12115-sd\n        layers: {liner: PTFE}\n", "class: iso-10380-s31603\n")["liner"], "the class allows one")
}

// TestFaults: every name that is not known is reported at once, with its place, and never taken for something near it.
func TestFaults(t *testing.T) {
	for name, tc := range map[string]struct{ old, with, path string }{
		"fluid":      {"fluid: MEK", "fluid: butanono", "fluids.product.fluid"},
		"ambiguous":  {"fluid: nitrogen", "fluid: sulfuric acid", "fluids.pad.fluid"},
		"contents":   {"fluid: ethanol", "fluid: ethanolo", "vessels.tank.contains.fluid"},
		"vessel":     {"    material: S31603\n    points:\n      bung", "    material: S31699\n    points:\n      bung", "vessels.drum.material"},
		"class":      {"en-12115-sd", "en-12115-xx", "runs.liquid.parts[0].class"},
		"liner":      {"liner: PTFE", "liner: PTFX", "runs.liquid.parts[0].layers.liner"},
		"end":        {"inlet: {standard: thread-g", "inlet: {standard: thread-x", "runs.liquid.parts[0].inlet.standard"},
		"seal":       {"ptfe-sheet", "ptfe-shoot", "runs.liquid.parts[0].inlet.seal.kind"},
		"sealed by":  {"kind: ptfe-sheet", "kind: ptfe-sheet, material: PTFX", "runs.liquid.parts[0].inlet.seal.material"},
		"body":       {"kind: valve, material: S31603", "kind: valve, material: S3", "runs.liquid.parts[3].material"},
		"wetted":     {"[FKM-1]", "[FKM-99]", "runs.liquid.parts[1].wetted[0]"},
		"evidence":   {"[{material: PTFE", "[{material: PTFX", "evidence[0].material"},
		"paper on":   {"fluid: butanone", "fluid: butanono", "evidence[0].fluid"},
		"two ends":   {"inlet: fill}", "inlet: fill, end: {standard: thread-npt}}", "runs.liquid.to.end"},
		"other ends": {"outlet: bung}", "outlet: bung, end: {standard: thread-npt}}", "runs.liquid.source.end"},
	} {
		t.Run(name, func(t *testing.T) {
			l, err := resolve.Resolve(parse(t, tc.old, tc.with), cat, resolve.Options{})
			assert.Nil(t, l)
			var problems sheet.Problems
			require.True(t, errors.As(err, &problems), "%v", err)
			require.Len(t, problems, 1)
			assert.Equal(t, tc.path, problems[0].Path)
			assert.Positive(t, problems[0].Line)
		})
	}
	_, err := resolve.Resolve(parse(t, "MEK", "nix", "liner: PTFE", "liner: nix", "[FKM-1]", "[nix]"), cat, resolve.Options{})
	var problems sheet.Problems
	require.True(t, errors.As(err, &problems))
	assert.Len(t, problems, 3)
	assert.IsIncreasing(t, []int{problems[0].Line, problems[1].Line, problems[2].Line})
}

// TestFarEnds: a run may start at a cylinder and end nowhere in particular; an end that is not described stays unknown.
func TestFarEnds(t *testing.T) {
	l := line(t, "source: {vessel: drum, outlet: bung}", "source: {cylinder: 200 bar(g)}", "to: {vessel: tank, inlet: fill}", "to: {end: {standard: thread-g}}")
	r := l.Runs[0]
	assert.Nil(t, r.Source)
	assert.Nil(t, r.SourceEnd.Sheet)
	assert.Equal(t, "thread-g", r.TargetEnd.Family.ID)
	l = line(t, "to: {vessel: tank, inlet: fill}", "to: tank")
	assert.Equal(t, l.Vessels[1], l.Runs[0].TargetEnd.Vessel)
	assert.Nil(t, l.Runs[0].TargetEnd.Sheet)
}

// TestSources gives the printed name of a document, and the id of one the catalog does not hold.
func TestSources(t *testing.T) {
	l := line(t)
	assert.Contains(t, l.Sources("en-12115"), "EN 12115")
	assert.Equal(t, "nix", l.Sources("nix"))
}

// TestRows: a verdict can be traced to each row it rests on.
func TestRows(t *testing.T) {
	rows := line(t).Rows
	for _, id := range []string{"fluids/butanone", "fluids/chlorine", "fluids/ethanol", "materials/S31603", "materials/FKM-1", "hoses/en-12115-sd", "connections/thread-g", "seals/ptfe-sheet"} {
		assert.Len(t, rows[id], 64, id)
	}
}

// TestYes: a hazard nobody knows of counts as present.
func TestYes(t *testing.T) {
	assert.True(t, resolve.Yes(nil))
	assert.True(t, resolve.Yes(&catalog.Flag{Value: true}))
	assert.False(t, resolve.Yes(&catalog.Flag{}))
}
