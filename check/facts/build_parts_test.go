package facts_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// TestChange: the record of a change comes through as it is written.
func TestChange(t *testing.T) {
	change := func(text string) facts.Line { return of(t, base+"change: {what: new gasket"+text+"}\n").Line }
	l := change(", record: R-1, in_kind: no, authorised: 2026-11-20, until: 2026-12-01")
	assert.True(t, l.Changed && l.ChangeRecord && l.ChangeTemporary)
	assert.Equal(t, []any{facts.Yes(false), facts.Know(20777), facts.Know(20788)}, []any{l.ChangeInKind, l.ChangeReviewed, l.ChangeUntil})
	l = change("")
	assert.False(t, l.ChangeInKind.Known || l.ChangeReviewed.Known || l.ChangeUntil.Known || l.ChangeRecord)
	assert.False(t, build(t).Line.Changed)
}

// TestGauge is judged by its range, and a gauge without one is not known to bear anything.
func TestGauge(t *testing.T) {
	gauge := func(text string) *facts.Facts {
		return build(t, reliefValve, reliefValve+"      - {id: G1, kind: gauge, material: S31603"+text+"}\n")
	}
	assert.Equal(t, facts.Know(600), capacity(t, gauge(", range: 6 bar(g)"), "G1 range").RatedKPa)
	assert.Contains(t, why(gauge(""), "G1 range", "capacities.rated_kpa"), "the range of G1 is not stated")
	for _, id := range capacityIDs(build(t, reliefValve, reliefValve+"      - {id: W1, kind: weight}\n")) {
		assert.NotContains(t, id, "W1")
	}
}

// TestCertified: a part's or vessel's rating with a paper speaks for ends whose standard gives no pressure.
func TestCertified(t *testing.T) {
	end := "inlet: {standard: thread-g, size: 1/2 in, gender: female}"
	f := build(t, "{id: T1, kind: fitting, rated: 50 bar(g), evidence: e", "{id: T1, kind: fitting, rated: 50 bar(g), evidence: e, "+end)
	assert.NotContains(t, capacityIDs(f), "T1 inlet")
	f = build(t, "{id: T1, kind: fitting, rated: 50 bar(g), evidence: e", "{id: T1, kind: fitting, rated: 50 bar(g), "+end)
	assert.Contains(t, why(f, "T1 inlet", "capacities.rated_kpa"), "has no pressure of its own")
	f = build(t, "rated: 50 bar(g), evidence: e, material: S31603}\n      - {id: RV1", "material: S31603}\n      - {id: RV1")
	assert.Contains(t, why(f, "T1 body", "capacities.rated_kpa"), "working pressure of T1 is not stated")
}

// TestVesselRating is stated, or not known.
func TestVesselRating(t *testing.T) {
	assert.Equal(t, facts.Know(1000), capacity(t, build(t), "tote vessel").RatedKPa)
	f := build(t, "    rated: 10 bar(g)\n", "")
	assert.Contains(t, why(f, "tote vessel", "capacities.rated_kpa"), "working pressure of tote is not stated")
	assert.NotContains(t, capacityIDs(f), "tank vessel", "open to the air")
}

// TestUnstatedTemperature leaves every rating and limit unknown: hot enough, nothing holds.
func TestUnstatedTemperature(t *testing.T) {
	f := build(t, "site: {lowest: 0 °C, highest: 40 °C, sun: shaded}\n", "", ", temperature: {lowest: 10 °C, highest: 40 °C}", "")
	for _, c := range f.Capacities {
		assert.False(t, c.RatedKPa.Known, c.ID)
	}
	for _, l := range f.Limits {
		assert.False(t, l.HottestCK.Known || l.ColdestCK.Known, l.ID)
	}
	assert.Contains(t, why(f, "PR1", "regulators.source_kpa"), "how hot")
}

func TestConductors(t *testing.T) {
	part := func(edits ...string) facts.Part {
		return find(t, build(t, edits...).Parts, "T1", func(p facts.Part) string { return p.ID })
	}
	kind := "kind: fitting, rated: 50 bar(g), evidence: e, material: S31603}\n      - {id: RV1"
	assert.Equal(t, facts.Yes(true), part().Conductor)
	assert.False(t, part().Bonded.Known)
	plastic := part(kind, "kind: fitting, material: PP}\n      - {id: RV1")
	assert.Equal(t, []facts.Bool{facts.Yes(false), facts.Yes(false)}, []facts.Bool{plastic.Conductor, plastic.Bonded}, "nothing to bond")
	assert.False(t, part(kind, "kind: fitting}\n      - {id: RV1").Conductor.Known)
}

// TestWorstAccumulator: yes beats unknown, unknown beats no.
func TestWorstAccumulator(t *testing.T) {
	at := func(first, second string) facts.Bool {
		f := build(t, gasRun, "", butanon, first, "  pad: "+pads, "  flush: "+second, "carries: [product, pad]", "carries: [product, flush]")
		return hose(t, f, "H1").Accumulator
	}
	low, high, unknown := "{fluid: butanone, conductivity: 1 pS/m}", "{fluid: butanone, conductivity: 5000 pS/m}", "{fluid: silicone-oil}"
	assert.Equal(t, facts.Yes(true), at(low, high))
	assert.Equal(t, facts.Yes(true), at(high, low))
	assert.Equal(t, facts.Yes(false), at(high, high))
	if s := at(unknown, high); s.Known {
		assert.True(t, s.V, "an oil holds charge")
	}
}

// TestPassiveShutoff is a device that acts on separation only.
func TestPassiveShutoff(t *testing.T) {
	f := build(t, checkValve, "      - {id: B1, kind: breakaway, acts_on: separation}\n")
	assert.True(t, f.Line.PassiveShutoff)
	assert.False(t, build(t).Line.PassiveShutoff)
	assert.True(t, build(t).Line.Pressurised)
}

// TestPartTestDates: the day and the interval together, of anything but hoses and relief devices, which have facts of their own.
func TestPartTestDates(t *testing.T) {
	const valve = "      - {id: B1, kind: breakaway, size: DN 50, material: S31603, evidence: e, tested: 2025-11-25, test_interval: 12 months}\n      - id: H1\n"
	of := func(id string, edits ...string) facts.Part {
		f := build(t, edits...)
		for _, p := range f.Parts {
			if p.ID == id {
				return p
			}
		}
		t.Fatal(id)
		return facts.Part{}
	}
	v := of("B1", "      - id: H1\n", valve)
	assert.True(t, v.TestDated)
	assert.Equal(t, []facts.Int{facts.Know(365), facts.Know(365)}, []facts.Int{v.TestedDays, v.Interval})
	for name, text := range map[string]string{"no day": " tested: 2025-11-25,", "no interval": ", test_interval: 12 months"} {
		assert.False(t, of("B1", "      - id: H1\n", strings.ReplaceAll(valve, text, "")).TestDated, name)
	}
	assert.False(t, of("RV1", "kdr: 0.7,", "kdr: 0.7, tested: 2020-01-01, test_interval: 12 months,").TestDated)
	assert.False(t, of("H1", "size: DN 50", "tested: 2020-01-01\n        test_interval: 12 months\n        size: DN 50").TestDated)
}
