package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/units"
)

// At each limit the sheet reads; one past it is in the fault tables.
func TestAccepted(t *testing.T) {
	for _, c := range []struct{ name, old, with string }{
		{"base", "line: T-1", "line: T-1"},
		{"first day", "line: T-1\n", "line: T-1\nas_of: 1990-01-01\n"},
		{"last day", "line: T-1\n", "line: T-1\nas_of: 2100-12-31\n"},
		{"equal temperatures", "{fluid: butanone}", "{fluid: butanone, temperature: {lowest: 20 °C, normal: 68 °F, highest: 20 °C}}"},
		{"kdr at one", "kind: hose\n        size: DN 25\n", "kind: relief\n        kdr: 1\n"},
		{"kdr small", "kind: hose\n        size: DN 25\n", "kind: relief\n        kdr: 0.01\n"},
		{"one stage", "kind: hose\n        size: DN 25\n", "kind: regulator\n        stages: 1\n"},
		{"three stages", "kind: hose\n        size: DN 25\n", "kind: regulator\n        stages: 3\n"},
		{"below sea level", "line: T-1\n", "line: T-1\nsite: {altitude: -200 m}\n"},
		{"name of 60", "  tank: {}\n", "  tank: {}\n  " + strings.Repeat("a", 60) + ": {}\n"},
		{"name with spaces and dots", "  tank: {}\n", "  tank: {}\n  V 1.2 (north): {}\n"},
		{"no marks found", "size: DN 25\n", "marks: []\n"},
		{"ends without vessels", "to: tank", "to: {end: {open: yes}}"},
		{"tab after a colon", "line: T-1", "line:\tT-1"},
		{"part kind last", "- id: H1\n        kind: hose\n", "- bend: 1 m\n        id: H1\n        kind: hose\n"},
		{"yaml start mark", "line: T-1", "---\nline: T-1"},
		{"yaml end mark", "size: DN 25\n", "size: DN 25\n...\n"},
		{"text over lines", "line: T-1\n", "line: T-1\ntitle: |\n  one\n  two\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Parse("t.yaml", broken(t, c.old, c.with))
			assert.NoError(t, err)
		})
	}
}

// The depth limit itself: 20 levels pass the structure check, 21 do not.
func TestDepth(t *testing.T) {
	nested := func(lists int) string {
		text := "line: T-1\nx: " + strings.Repeat("[", lists) + strings.Repeat("]", lists) + "\n"
		return faults(t, broken(t, "line: T-1\n", text)).Error()
	}
	assert.NotContains(t, nested(19), "nested")
	assert.Contains(t, nested(20), "nested more than 20 deep")
}

// What YAML would turn into numbers and truth values stays as typed.
func TestTextStaysText(t *testing.T) {
	for _, typed := range []string{"NO", "012", "1e3", "1.4404", "0x1F", "on", "2024-03-01", ".inf", "12:30:45", "1_000", "y"} {
		line := parse(t, string(broken(t, "- id: H1", "- id: "+typed)))
		assert.Equal(t, typed, line.Runs[0].V.Parts[0].ID.V)
	}
	line := parse(t, string(broken(t, "{fluid: butanone}", "{fluid: NO}")))
	assert.Equal(t, "NO", line.Fluids[0].V.Fluid.V)
	line = parse(t, string(broken(t, "tank: {}", "no: {material: 1.4404}\n  tank: {}")))
	assert.Equal(t, "no", line.Vessels[1].Key)
	assert.Equal(t, "1.4404", line.Vessels[1].V.Material.V)
}

func TestYesAndNo(t *testing.T) {
	for typed, want := range map[string]bool{"yes": true, "true": true, "no": false, "false": false, `"yes"`: true} {
		bonded := parse(t, string(broken(t, "tank: {}", "tank: {bonded: "+typed+"}"))).Vessels[1].V.Bonded
		assert.True(t, bonded.Set)
		assert.Equal(t, want, bonded.V, typed)
	}
}

func TestSeals(t *testing.T) {
	end := func(seal string) End {
		return *parse(t, string(broken(t, "size: DN 25\n", "inlet: {seal: "+seal+"}\n"))).Runs[0].V.Parts[0].Inlet
	}
	one := end("{kind: o-ring}")
	require.Len(t, one.Seals, 1)
	assert.Equal(t, "o-ring", one.Seals[0].Kind.V)
	assert.False(t, one.NoSeal.Set)
	two := end("[{kind: o-ring}, {kind: flat-washer}]")
	require.Len(t, two.Seals, 2)
	assert.Equal(t, "flat-washer", two.Seals[1].Kind.V)
	none := end("none")
	assert.Empty(t, none.Seals)
	assert.Equal(t, Of[bool]{V: true, Set: true, Pos: Pos{17, 23}, Text: "none"}, none.NoSeal)
}

func TestTargetShorthand(t *testing.T) {
	short, long := parse(t, base), parse(t, string(broken(t, "to: tank", "to: {vessel: tank}")))
	assert.Equal(t, Of[string]{V: "tank", Set: true, Pos: Pos{13, 9}, Text: "tank"}, short.Runs[0].V.To.Vessel)
	assert.Equal(t, "tank", long.Runs[0].V.To.Vessel.V)
}

func TestQuantities(t *testing.T) {
	line := parse(t, string(broken(t, "kind: hose\n        size: DN 25\n", `kind: regulator
        stages: 2
        set: 3 bar(g)
        flow_coefficient: Cv 0.06
        lock_up: 15 %
        test_interval: 1 year
        tested: 2026-02-10
`)))
	part := line.Runs[0].V.Parts[0]
	assert.Equal(t, 2, part.Stages.V)
	assert.InDelta(t, 3e5, part.Set.V.Pascals, 1e-6)
	assert.Equal(t, units.GaugeBasis, part.Set.V.Basis)
	assert.InDelta(t, 0.06, part.Flow.V.Cv(), 1e-12)
	assert.InDelta(t, 0.15, float64(part.LockUp.V), 1e-12)
	assert.Equal(t, units.Months(12), part.TestEvery.V)
	assert.Equal(t, "2026-02-10", part.Tested.V.String())
	assert.False(t, part.Tag.Set)
}
