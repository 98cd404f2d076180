package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// TestClosures: a point no run uses is spoken of where the sheet says what shuts it, and asked for where something dangerous
// pushes behind it.
func TestClosures(t *testing.T) {
	const gas = "      gas: {standard: thread-g, size: 1/2 in, gender: male}\n"
	spare := func(more string) []string {
		return []string{gas, gas + "      spare: {standard: thread-g, size: 1/2 in" + more + "}\n"}
	}
	at := func(edits []string) []facts.Closure { return build(t, edits...).Closures }
	assert.Equal(t, []facts.Closure{{ID: "tote/spare", Pressure: true, Hazard: true}}, at(spare("")))
	assert.Equal(t, []facts.Closure{{ID: "tote/spare", Form: "dust-cap", Pressure: true, Hazard: true}}, at(spare(", closed_by: dust-cap")))
	assert.Empty(t, at(spare(", open: yes")))
	water := []string{"fluid: butanone, concentration: 100 %", "fluid: water"}
	assert.Empty(t, at(append(spare(""), water...)), "nothing dangerous")
	assert.Equal(t, []facts.Closure{{ID: "tote/spare", Form: "plug", Pressure: true}}, at(append(spare(", closed_by: plug"), water...)))
	assert.Empty(t, at([]string{tankPoint, tankPoint + "\n      top: {standard: thread-g, size: 1/2 in}"}), "a tank open to the air")
	assert.Empty(t, at(nil), "every point is in use")
}

// TestClosureInRun: a closure beside the flow is a part like others, so that its rating is judged too.
func TestClosureInRun(t *testing.T) {
	f := build(t, "      - {id: CV1,", "      - {id: CL1, kind: closure, form: cap, rated: 10 bar(g), evidence: e, material: S31603}\n      - {id: CV1,")
	assert.Equal(t, []facts.Closure{{ID: "CL1", Form: "cap", Pressure: true}}, f.Closures)
	assert.Equal(t, facts.Know(1000), capacity(t, f, "CL1 body").RatedKPa)
	assert.Equal(t, "T1.outlet to CV1.inlet", joint(t, f, "T1.outlet to CV1.inlet").ID, "it stands beside the flow")
}
