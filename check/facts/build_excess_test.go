package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// fitted puts an excess-flow valve before the hose of a run that carries nothing but the liquid.
func fitted(more, hoseMore string) []string {
	return []string{
		"carries: [product, pad]", "carries: [product]",
		"      - id: H1\n", "      - {id: XF1, kind: excess-flow, size: DN 50, material: S31603, evidence: e" + more + "}\n      - id: H1\n",
		"        size: DN 50\n", "        size: DN 50\n        length: 4 m\n" + hoseMore,
		"inlet: fill}", "inlet: fill}\n    flow: 18 m3/h",
	}
}

func excess(t *testing.T, edits []string) facts.Excess {
	f := build(t, edits...)
	if !assert.Len(t, f.ExcessFlow, 1) {
		return facts.Excess{}
	}
	return f.ExcessFlow[0]
}

// TestExcessFlow: closing flow and duty round up, the broken flow down.
func TestExcessFlow(t *testing.T) {
	x := excess(t, fitted(", closing_flow: 27.0001 m3/h, broken_flow: 40.0001 m3/h, bypass: 1 mm", ""))
	assert.Equal(t, facts.Excess{
		ID: "XF1", Run: "liquid", Credited: true, BypassSaid: true,
		CloseMLPS: facts.Know(7501), BrokenMLPS: facts.Know(11111), DutyMLPS: facts.Know(5000), BypassUM: facts.Know(1000),
	}, x)
	assert.Empty(t, build(t, fitted(", acts_on: separation", "")...).ExcessFlow, "what acts on separation has no closing flow")
	water := append(fitted("", ""), "fluid: butanone, concentration: 100 %", "fluid: water")
	assert.False(t, excess(t, water).Credited)
}

// TestBrokenFlow: 3 bar of pad and 1 m of butanone (density near 800 kg/m3) over an entry and exit, two parts and 4 m of hose
// of 50 mm. By hand: k = 1.5 + 1 + 1 + 0.013 * 4 / 0.05 = 4.54, v = sqrt(2 * 308 kPa / (800 * 4.54)) = 13 m/s, 25.6 L/s.
func TestBrokenFlow(t *testing.T) {
	q := excess(t, fitted("", "")).BrokenMLPS
	assert.True(t, q.Known)
	assert.InEpsilon(t, 25600, q.V, 0.05)
	longer := excess(t, fitted("", "        bend: 1 m\n"))
	assert.Equal(t, q, longer.BrokenMLPS)
	far := fitted("", "")
	far[5] = "        size: DN 50\n        length: 40 m\n"
	assert.Less(t, excess(t, far).BrokenMLPS.V, q.V)
}

func TestBrokenFlowNotKnown(t *testing.T) {
	for name, tc := range map[string]struct {
		edits []string
		want  string
	}{
		"gas goes with it": {[]string{"carries: [product]\n", "carries: [product, pad]\n"}, "nothing but liquid"},
		"boils in the air": {[]string{"fluid: butanone, concentration: 100 %", "fluid: ammonia"}, "boils"},
		"a pump":           {[]string{"      - {id: XF1,", "      - {id: P1, kind: pump, shutoff: 4 bar(g), material: S31603}\n      - {id: XF1,"}, "pump"},
		"size missing":     {[]string{"kind: excess-flow, size: DN 50,", "kind: excess-flow,"}, "size of XF1"},
	} {
		t.Run(name, func(t *testing.T) {
			f := build(t, append(fitted("", ""), tc.edits...)...)
			assert.False(t, f.ExcessFlow[0].BrokenMLPS.Known)
			assert.Contains(t, why(f, "XF1", "excess_flows.broken_flow_mlps"), tc.want)
		})
	}
}
