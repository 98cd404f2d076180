package inspect_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
)

const shippedLines = "../../testdata/lines/"

func shipped(name string) string { return shippedLines + name + "/line.yaml" }

// edited is a shipped sheet with some of its text exchanged, each of which has to be there.
func edited(t *testing.T, name string, pairs ...string) string {
	t.Helper()
	text, err := os.ReadFile(shipped(name))
	require.NoError(t, err)
	for n := 0; n < len(pairs); n += 2 {
		require.True(t, strings.Contains(string(text), pairs[n]), pairs[n])
	}
	path := filepath.Join(t.TempDir(), "line.yaml")
	require.NoError(t, os.WriteFile(path, []byte(strings.NewReplacer(pairs...).Replace(string(text))), 0o600))
	return path
}

// TestLeakTestVessel: a vessel that stands under the test bounds it, as does nine tenths of its relief device.
func TestLeakTestVessel(t *testing.T) {
	for path, want := range map[string]string{
		shipped("toluene-yard"):    "at most 10 bar(g) (returnable)",  // not the 40 bar(g) of the check valve
		shipped("steam-sterilise"): "at most 2.25 bar(g) (fermenter)", // nine tenths of its relief device, set to 2.5 bar(g)
	} {
		l, _ := listOf(t, engine(t), path)
		require.Contains(t, l.Tests[0].Why, want, path)
	}
	r := inspected(t, shipped("toluene-yard-corrected"), map[string]string{"leak pad/pressure": "5.5 bar(g)"})
	require.Equal(t, report.Unfit, r.Word)
	require.Contains(t, r.Rejected[0].Says, "above the 5.4 bar(g) that the line may see")
}

// TestLeakTestFluid: what the test is made with suits the line, and gas is no stand-in where it would store too much energy.
func TestLeakTestFluid(t *testing.T) {
	for name, want := range map[string]string{
		"air-tools":                        "air as it is used here, or nitrogen",
		"steam-sterilise":                  "nitrogen, or air free of oil",
		"oxygen-furnace":                   "nitrogen, dry and free of oil",
		"butanone-day-tank":                "nitrogen or another dry inert gas; never air or oxygen",
		"ammonia-nurse":                    "nitrogen or another dry inert gas; never air or oxygen",
		"caustic-ibc":                      "Water, the flush liquid of the sheet, with all gas let out; or nitrogen",
		"dairy-steamed":                    "Water, the product itself, with all gas let out; or nitrogen",
		"acid-into-hypochlorite-corrected": "a liquid that the product bears, by its safety data sheet, with all gas let out; or nitrogen",
		"hydraulic-rig":                    "Mineral hydraulic and lubricating oil, the product itself, with all gas let out; not with gas, which stores too much energy at this pressure (practice, no source)",
	} {
		l, _ := listOf(t, engine(t), shipped(name))
		require.Equal(t, want, l.Tests[0].Fluid, name)
	}
}

// TestLeakTestRelief: staying below a relief device is no reason to forbid the line.
func TestLeakTestRelief(t *testing.T) {
	l, _ := listOf(t, engine(t), shipped("hydraulic-rig"))
	require.Equal(t, "225 bar(g)", l.Tests[0].Pressure) // nine tenths of 250
	require.NotContains(t, l.Tests[0].Why, "must not be used")
	require.Contains(t, l.Tests[0].Why, "go over the joints again at the first use")
	weak, _ := listOf(t, engine(t), edited(t, "sunflower-tanker", "rated: 10 bar(g)", "rated: 2 bar(g)"))
	require.Contains(t, weak.Tests[0].Why, "must not be used as it is")
}

// TestTestedWith: what the record says was used is judged against the plan, and a word that names nothing is asked again.
func TestTestedWith(t *testing.T) {
	for _, x := range []struct {
		line, run, fluid string
		rejected, open   string
	}{
		{"butanone-day-tank", "liquid", "Nitrogen, 2 bottles", "", ""},
		{"butanone-day-tank", "liquid", "O2", "carries what can burn", ""},
		{"butanone-day-tank", "pad", "compressed air", "carries what can burn", ""},
		{"butanone-day-tank", "liquid", "butanone", "", "planned is nitrogen"},
		{"butanone-day-tank", "liquid", "hydrogen", "", "planned is nitrogen"},
		{"oxygen-furnace", "oxygen", "air", "the list says never", ""},
		{"air-tools", "air", "compressed air", "", ""},
		{"caustic-ibc", "liquid", "water", "", ""},
		{"caustic-ibc", "liquid", "nitrogen", "", ""},
		{"caustic-ibc", "liquid", "caustic soda", "can hurt people", ""},
		{"caustic-ibc", "liquid", "hydrogen", "can hurt people", ""},
		{"caustic-ibc", "liquid", "blue stuff", "", "does not know"},
		{"hydraulic-rig", "oil", "hydraulic oil", "", ""},
		{"hydraulic-rig", "oil", "nitrogen", "", "a gas, and planned is Mineral hydraulic"},
		{"hydraulic-rig", "oil", "air", "", "a gas, and planned is Mineral hydraulic"},
	} {
		r := inspected(t, shipped(x.line), map[string]string{"leak " + x.run + "/fluid": x.fluid})
		said := ""
		for _, j := range r.Rejected {
			said += j.Says
		}
		require.Equal(t, x.rejected == "", said == "", "%+v: %s", x, said)
		require.Contains(t, said, x.rejected)
		open := strings.Join(slicesWith(r.Open, x.run), "\n")
		require.Equal(t, x.open == "", open == "", "%+v: %s", x, open)
		require.Contains(t, open, x.open)
	}
	for _, word := range []string{"yes", "ok", "none", "-", "?"} {
		l, _ := listOf(t, engine(t), shipped("butanone-day-tank"))
		_, err := l.Merge([]byte(fill(l, map[string]string{"leak pad/fluid": word})))
		require.ErrorContains(t, err, "does not say what the test was made with", word)
	}
}

func slicesWith(all []string, run string) (out []string) {
	for _, s := range all {
		if strings.HasPrefix(s, "leak test of "+run) {
			out = append(out, s)
		}
	}
	return out
}

// TestNoLeakTestPlanned: where no pressure could be planned, one that was used proves nothing.
func TestNoLeakTestPlanned(t *testing.T) {
	for _, text := range []string{"3 bar(g)", "none can be given"} {
		r := inspected(t, shipped("palm-oil-tanker"), map[string]string{"leak liquid/pressure": text})
		require.Contains(t, r.Open, "leak test of liquid: none could be planned, for what the source brings is not known")
	}
}

// TestRegulatedJoints: the joints before a regulator are not left out.
func TestRegulatedJoints(t *testing.T) {
	l, _ := listOf(t, engine(t), shipped("oxygen-furnace"))
	require.Contains(t, l.Tests[0].How, "leak fluid made for oxygen")
	l, _ = listOf(t, engine(t), butanone)
	require.Contains(t, l.Tests[0].How, "The joints before PR1 are gone over when its source is opened")
	require.NotContains(t, l.Tests[1].How, "backed off")
}

const bare = `line: P-1
as_of: 2026-11-25
fluids: {product: {fluid: water, temperature: {normal: 20 °C, highest: 30 °C}}}
vessels:
  there: {kind: tank, vent: open, points: {in: {standard: flange-en-1092-1, size: DN 25, class: PN 16, facing: B1}}}
runs:
  liquid:
    carries: [product]
    source: {supply: 6 bar(g), end: {standard: flange-en-1092-1, size: DN 25, class: PN 16, facing: B1, material: S31603, seal: {kind: ptfe-expanded, material: PTFE, rated: 16 bar(g)}}}
    to: {vessel: there, inlet: in}
    parts:
      - {id: V1, kind: valve, rated: 16 bar(g), material: S31603, inlet: {standard: flange-en-1092-1, size: DN 25, class: PN 16, facing: B1, material: S31603}, outlet: {standard: flange-en-1092-1, size: DN 25, class: PN 16, facing: B1, material: S31603, seal: {kind: ptfe-expanded, material: PTFE, rated: 16 bar(g)}}}
`

// TestWithoutHose: a valve that stands between source and destination keeps a test out of one of them at most.
func TestWithoutHose(t *testing.T) {
	path := filepath.Join(t.TempDir(), "line.yaml")
	require.NoError(t, os.WriteFile(path, []byte(bare), 0o600))
	l, _ := listOf(t, engine(t), path)
	require.NotEmpty(t, l.Tests[0].Pressure, l.Tests[0].Why)
	require.Contains(t, l.Tests[0].How, "blank the end at there off")
}
