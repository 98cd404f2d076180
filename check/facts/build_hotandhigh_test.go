package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// TestHotAndHigh: solid PTFE bears 5320 bar times °C (reference page on flat gaskets, restated); most kinds have no such limit.
// The base line pushes with 3 bar, 10 % lock-up and 1 m of liquid at 40 °C, and a failed regulator the relief device holds.
func TestHotAndHigh(t *testing.T) {
	at := func(seal string) facts.Seal {
		f := build(t, hoseEnd+" seal: {kind: ptfe-expanded, size: NPS 2, material: PTFE}", hoseEnd+" seal: {"+seal+"}")
		return find(t, f.Seals, lastJoint+" seal 1", func(s facts.Seal) string { return s.ID })
	}
	sheet := at("kind: ptfe-sheet, size: NPS 2")
	assert.True(t, sheet.Both)
	assert.Equal(t, facts.Know(532000), sheet.MostBoth)
	assert.InDelta(t, sheet.PShare.V*40, sheet.HaveBoth.V, 40, "of 10 bar a per mille is a kilopascal; times 40 °C")
	open := at("kind: ptfe-expanded, size: NPS 2")
	assert.False(t, open.Both)
	assert.False(t, open.HaveBoth.Known)
	assert.Equal(t, facts.Know(154), open.TShare, "40 of 260 °C, up")
	assert.True(t, open.PShare.Known)
	rated := at("kind: ptfe-sheet, size: NPS 2, rated: 16 bar(g), evidence: e")
	assert.False(t, rated.Both, "its own document speaks")
	assert.False(t, rated.PShare.Known)
}

// TestLowSide: a hose behind a regulator is protected by the relief device there.
func TestLowSide(t *testing.T) {
	low := func(edits ...string) facts.Hose {
		return hose(t, build(t, append(edits, "      - {id: F1,", "      - {id: H9, kind: hose}\n      - {id: F1,")...), "H9")
	}
	h := low("      - {id: CV1, kind: check-valve, rated: 40 bar(g), evidence: e, material: S31603}\n", "")
	assert.True(t, h.LowSide)
	assert.Equal(t, facts.Know(600), h.LowReliefKPa)
	assert.Equal(t, facts.Know(600), low().LowReliefKPa, "the device limits what goes on through the check valve")
	none := low("      - {id: RV1, kind: relief, set: 6 bar(g), area: 50 mm2, kdr: 0.7, rated: 40 bar(g), evidence: e, material: S31603}\n", "")
	assert.True(t, none.LowSide)
	assert.False(t, none.LowReliefKPa.Known)
	assert.False(t, hose(t, build(t), "H1").LowSide)
}
