package sequence_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// TestKeys: a key that an action does not take is refused, for its writer means something by it; so is an amount of
// nothing, a pressure below zero, and a part that stands in another run than the one named.
func TestKeys(t *testing.T) {
	steps := map[string]sequence.Step{
		"open: it takes no quantity: use run, item, slowly, text": {Do: "open", Item: "V1", Quantity: "5 L"},
		"connect: it takes no pressure":                           {Do: "connect", Item: "H1", Pressure: "3 bar(g)"},
		"transfer: it takes no item":                              {Do: "transfer", Item: "H2"},
		"transfer: it takes no to":                                {Do: "transfer", To: "mixer"},
		"vent: it takes no fluid":                                 {Do: "vent", Item: "H2", Fluid: "pad"},
		"bond: it takes no run":                                   {Do: "bond", Item: "mixer", Run: "pad"},
		`the sheet has no run "steam": use one of pad, liquid`:    {Do: "drain", Item: "H2", Run: "steam"},
		"vent: H2 stands in the run liquid, not in pad":           {Do: "vent", Item: "H2", Run: "pad"},
		"disconnect: H1 stands in the run pad, not in liquid":     {Do: "disconnect", Item: "H1", Run: "liquid"},
		`"0 L" moves nothing`:                                     {Do: "transfer", Quantity: "0 L"},
		`"-1 bar(g)" is below zero`:                               {Do: "set", Item: "PR1", Pressure: "-1 bar(g)"},
		`vent: to: "roof": write closed`:                          {Do: "vent", Item: "H2", To: "roof"},
	}
	for want, step := range steps {
		_, err := model(t, "../../testdata/sequences/pad/line.yaml").Play([]sequence.Step{step})
		require.ErrorContains(t, err, want)
	}
	_, err := model(t, "../../testdata/sequences/pad/line.yaml").Play([]sequence.Step{
		{Do: "connect", Item: "H1", Run: "pad", Text: "by hand"}, {Do: "vent", Item: "H2", Run: "liquid", To: "closed"}, {Do: "set", Item: "PR1", Pressure: "0 bar(g)", Slowly: true},
	})
	require.NoError(t, err)
}

// TestTakes: every action says which keys it takes, so none is refused for being forgotten.
func TestTakes(t *testing.T) {
	for _, do := range sequence.Actions() {
		_, err := model(t, "../../testdata/sequences/pad/line.yaml").Play([]sequence.Step{{Do: do, Item: "nowhere"}})
		if err != nil {
			require.NotContains(t, err.Error(), "is no action", do)
		}
	}
}

// TestWhereVentLeads: what is toxic must not be vented without saying where to, and after a flush it no longer is.
func TestWhereVentLeads(t *testing.T) {
	m := model(t, "../../testdata/sequences/toxic/line.yaml")
	steps := m.Derive().Steps
	i := slices.IndexFunc(steps, func(s sequence.Step) bool { return s.Do == "vent" })
	require.Equal(t, "closed", steps[i].To)
	steps[i].To = ""
	out, err := m.Play(steps)
	require.NoError(t, err)
	require.Empty(t, out.Faults)
	require.Contains(t, strings.Join(out.Open, ""), "where the vent of H1 leads")
}

// TestUnknownSource: what a padded vessel holds has to be known, or gas may blow through unseen.
func TestUnknownSource(t *testing.T) {
	m := model(t, without(t, "pad/line.yaml", "volume: 1000 L, filled: 85 %, "))
	figures := ""
	for _, f := range m.Figures() {
		figures += f.What + ": " + f.Says + "\n"
	}
	require.Contains(t, figures, "source: not known: vessels.returnable.volume and vessels.returnable.filled not stated")
	out, err := m.Play(m.Derive().Steps)
	require.NoError(t, err)
	require.Contains(t, strings.Join(out.Open, "\n"), "what returnable holds: write vessels.returnable.volume and vessels.returnable.filled")
	m = model(t, without(t, "pump/line.yaml", "volume: 1000 L, filled: 95 %, "))
	out, err = m.Play(m.Derive().Steps) // nothing pushes: it runs dry, and harms none but the pump
	require.NoError(t, err)
	require.Empty(t, out.Open)
}

// TestRegulatorOpenedAgain: after a pause the gas behind the regulator is at its pressure, and nothing strikes it.
func TestRegulatorOpenedAgain(t *testing.T) {
	start := []sequence.Step{
		{Do: "connect", Item: "H1"}, {Do: "open", Item: "source", Run: "pad", Slowly: true}, {Do: "set", Item: "PR1"}, {Do: "close", Item: "source", Run: "pad"},
	}
	again := sequence.Step{Do: "open", Item: "source", Run: "pad", Slowly: true}
	out, err := model(t, "../../testdata/sequences/pad/line.yaml").Play(append(slices.Clone(start), again))
	require.NoError(t, err)
	require.NotContains(t, names(out), sequence.SetEarly)
	out, err = model(t, "../../testdata/sequences/pad/line.yaml").Play(append(start, sequence.Step{Do: "vent", Item: "returnable"}, again))
	require.NoError(t, err)
	require.Contains(t, names(out), sequence.SetEarly)
}

// TestGasFlush: a gas takes no time by the flow of the liquid, raises no level, and presses a closed destination.
func TestGasFlush(t *testing.T) {
	blow := []sequence.Step{{Do: "connect", Item: "H1"}, {Do: "open", Item: "V2"}, {Do: "flush", Item: "H1", Fluid: "dry"}, {Do: "close", Item: "V2"}}
	m := model(t, "../../testdata/sequences/reacts/line.yaml")
	out, err := m.Play(blow)
	require.NoError(t, err)
	require.Empty(t, out.Faults)
	require.Nil(t, out.Efforts[0].Minutes)
	require.NotContains(t, strings.Join(out.Open, "\n"), "flush")
	out, err = model(t, changed(t, "reacts/line.yaml", "filled: 20 %, vent: open", "filled: 20 %, vent: closed")).Play(blow)
	require.NoError(t, err)
	require.Contains(t, strings.Join(out.Open, "\n"), "what tank comes to when gas is blown into it")
	for _, s := range model(t, "../../testdata/lines/dairy-steamed/line.yaml").Derive().Steps {
		if s.Do == "flush" {
			require.Empty(t, s.Quantity)
			require.Contains(t, s.Text, "draws a vacuum")
		}
	}
}

// TestGasLine: a gas line is used between opening and shutting, its regulator is backed off before, and what the gas takes
// is counted as gas, not as time.
func TestGasLine(t *testing.T) {
	m := model(t, "../../testdata/lines/hydrogen-reactor/line.yaml")
	steps := m.Derive().Steps
	text := ""
	for _, s := range steps {
		text += m.Says(s) + "\n"
	}
	order := []string{"sweep it with an inert gas", "PR1 is backed off before", "Open the cylinder valve", "Set PR1", "for as long as the work takes", "Close the cylinder valve", "Vent reactor"}
	for _, want := range order {
		i := strings.Index(text, want)
		require.GreaterOrEqual(t, i, 0, want)
		text = text[i:]
	}
	out, err := m.Play(steps)
	require.NoError(t, err)
	require.Len(t, out.Total, 1)
	require.Equal(t, "gas", out.Total[0].Run)
	require.Contains(t, out.Total[0].Says, "gas not known")
}

// TestAir: air is no oxygen, and may be opened as it comes.
func TestAir(t *testing.T) {
	out, err := model(t, "../../testdata/lines/air-tools/line.yaml").Play([]sequence.Step{{Do: "connect", Item: "H1"}, {Do: "open", Item: "V1"}, {Do: "open", Item: "source"}})
	require.NoError(t, err)
	require.NotContains(t, names(out), sequence.QuickOxygen)
}
