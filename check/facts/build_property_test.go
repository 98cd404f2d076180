package facts_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/facts"
)

// TestDeterminism: one sheet, one text, whatever order maps are read in.
func TestDeterminism(t *testing.T) {
	want := asJSON(t, build(t))
	for range 20 {
		assert.Equal(t, want, asJSON(t, build(t)))
	}
}

// TestOrderOfRuns: which run is written first changes nothing but the order of the lists.
func TestOrderOfRuns(t *testing.T) {
	f := build(t)
	swapped := of(t, edited(t, gasRun, "")+gasRun)
	assert.ElementsMatch(t, f.Capacities, swapped.Capacities)
	assert.ElementsMatch(t, f.Limits, swapped.Limits)
	assert.ElementsMatch(t, f.Joints, swapped.Joints)
	assert.ElementsMatch(t, f.Pairs.Suitable, swapped.Pairs.Suitable)
	assert.ElementsMatch(t, f.Meetings, swapped.Meetings)
	assert.ElementsMatch(t, f.Cases, swapped.Cases)
	assert.Equal(t, f.Values, swapped.Values)
	assert.Equal(t, f.Unknowns, removed(swapped.Unknowns, f.Unknowns))
}

// removed keeps of got what is in want: places in the sheet are named by the order of its parts alone.
func removed(got, want []facts.Unknown) []facts.Unknown {
	return slices.DeleteFunc(slices.Clone(got), func(u facts.Unknown) bool { return !slices.Contains(want, u) })
}

// harder asserts that no item holds more or has to hold less, and that nothing which was not known is known, or gone.
func harder(t *rapid.T, easy, hard *facts.Facts) {
	for _, was := range easy.Capacities {
		i := slices.IndexFunc(hard.Capacities, func(c facts.Capacity) bool { return c.ID == was.ID })
		if i < 0 {
			// a push that is not known any more is filed under a name that says so
			if !slices.ContainsFunc(hard.Capacities, func(c facts.Capacity) bool { return c.Part == was.Part && !c.DemandKPa.Known }) {
				t.Fatalf("%s is no longer judged", was.ID)
			}
			continue
		}
		now := hard.Capacities[i]
		if now.DemandKPa.Known && was.DemandKPa.Known && now.DemandKPa.V < was.DemandKPa.V {
			t.Fatalf("%s: demand fell from %d to %d kPa", was.ID, was.DemandKPa.V, now.DemandKPa.V)
		}
		if now.RatedKPa.Known && (!was.RatedKPa.Known || now.RatedKPa.V > was.RatedKPa.V) {
			t.Fatalf("%s: rating rose from %v to %d kPa", was.ID, was.RatedKPa, now.RatedKPa.V)
		}
	}
}

// metalHose has a table of factors, so that its rating moves with temperature.
const metalHose = "        class: iso-10380-s31603\n        size: DN 50\n        rated: 100 bar(g)\n        evidence: e\n"

// TestHarderIsNeverBetter raises the set pressure, the temperature, the head, the cylinder and the lock-up.
func TestHarderIsNeverBetter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line := func(set, top, head, cylinder, lockUp int) *facts.Facts {
			return build(t, hoseHead, metalHose, layers, "layers: {liner: S31603, reinforcement: BRAID-AUS}",
				"set: 3 bar(g)", fmt.Sprintf("set: %d mbar(g)", set), "highest: 40 °C", fmt.Sprintf("highest: %.1f °C", float64(top)/10),
				"head: 1 m", fmt.Sprintf("head: %d mm", head), "cylinder: 200 bar(g)", fmt.Sprintf("cylinder: %d bar(g)", cylinder), "lock_up: 10 %", fmt.Sprintf("lock_up: %d %%", lockUp))
		}
		draw := func(name string, from, to int) (int, int) {
			low := rapid.IntRange(from, to).Draw(t, name)
			return low, rapid.IntRange(low, to).Draw(t, name+" raised")
		}
		set, setUp := draw("set", 100, 9000)
		top, topUp := draw("top", 200, 900)
		head, headUp := draw("head", 0, 20000)
		cylinder, cylinderUp := draw("cylinder", 50, 300)
		lockUp, lockUpUp := draw("lock-up", 1, 60)
		harder(t, line(set, top, head, cylinder, lockUp), line(setUp, topUp, headUp, cylinderUp, lockUpUp))
	})
}

// TestLargerReliefIsNeverWorse, and a smaller or higher set one never better.
func TestReliefIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line := func(area, set int) *facts.Facts {
			return build(t, "set: 6 bar(g), area: 50 mm2", fmt.Sprintf("set: %d mbar(g), area: %d mm2", set, area))
		}
		small := rapid.IntRange(1, 900).Draw(t, "small")
		large := rapid.IntRange(small, 3000).Draw(t, "large")
		low := rapid.IntRange(50, 9000).Draw(t, "low")
		high := rapid.IntRange(low, 20000).Draw(t, "high")
		harder(t, line(large, low), line(small, high))
	})
}

// TestReadBack: the facts of any such line are a document that the schema and the reader accept.
func TestReadBack(t *testing.T) {
	for _, edits := range [][]string{nil, {reliefValve, ""}, {butanon, "{fluid: ammonia}"}, {hoseHead, ""}, {"    vent: closed\n", ""}} {
		f := build(t, edits...)
		got, err := facts.Read([]byte(asJSON(t, f)))
		assert.NoError(t, err)
		assert.Equal(t, asJSON(t, f), asJSON(t, got))
	}
}
