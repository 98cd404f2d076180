package measure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/units"
)

// nitrogen is the gas of a full cylinder: Z 1.0485 at 200 bar(g) and 15 °C as the vectors have it.
var nitrogen = Gas{MolarMass: 28.0134, K: 1.4, Z: 1.0485, T: 288.15}

const (
	cylinder200 units.AbsolutePressure = 200e5 + 101325
	openEnd     units.AbsolutePressure = 101325
)

// Computed: nitrogen from 200 bar(g) through a regulator of Cv 0.06.
func TestV2_8(t *testing.T) {
	w := ValveGasFlow(units.FromCv(0.06), cylinder200, openEnd, 0.75, nitrogen)
	assert.InEpsilon(t, 201.13, w, 2e-3)
}

// The Cv constant with a Kv, the Kv constant with a Cv, and a gauge pressure for an absolute one must each fail V2.8.
func TestV2_8CatchesSwaps(t *testing.T) {
	c := units.FromCv(0.06)
	for name, w := range map[string]float64{
		"N8 of Cv with Kv":  valveGas(c.Kv(), n8Cv, cylinder200, openEnd, 0.75, nitrogen),
		"N8 of Kv with Cv":  valveGas(c.Cv(), n8Kv, cylinder200, openEnd, 0.75, nitrogen),
		"gauge as absolute": valveGas(c.Kv(), n8Kv, 200e5, openEnd, 0.75, nitrogen),
		"Celsius as kelvin": valveGas(c.Kv(), n8Kv, cylinder200, openEnd, 0.75, Gas{28.0134, 1.4, 1.0485, 15}),
	} {
		assert.Greater(t, math.Abs(w/201.13-1), 2e-3, name)
	}
	assert.InEpsilon(t, 173.9, valveGas(c.Kv(), n8Cv, cylinder200, openEnd, 0.75, nitrogen), 2e-3)
	assert.InEpsilon(t, 201.13, valveGas(c.Cv(), n8Cv, cylinder200, openEnd, 0.75, nitrogen), 2e-3)
}

// Restated: IEC 60534-2-1 example 3, by an open library's check; computed without the reducers.
func TestV2_4(t *testing.T) {
	co2 := Gas{MolarMass: 44.01, K: 1.30, Z: 0.988, T: 433}
	body := ValveBody{XT: 0.60, Bore: 0.05, Inlet: 0.08, Outlet: 0.1}
	assert.InEpsilon(t, 72.5866, GasValveSize(3800, 680e3, 310e3, body, co2).Kv(), 1e-6)
	bare := GasValveSize(3800, 680e3, 310e3, ValveBody{XT: 0.60}, co2)
	assert.InDelta(t, 62.652, bare.Kv(), 5e-4)
	// The volumetric form gives the flow back.
	assert.InEpsilon(t, 3800, ValveGasVolume(bare, 680e3, 310e3, 0.60, co2), 1e-9)
}

// The mass and the volumetric form agree through the molar volume at 0 °C and 1 atm, 22.414 m3/kmol (CODATA, recalled).
func TestValveGasFormsAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p1 := units.AbsolutePressure(rapid.Float64Range(2e5, 300e5).Draw(t, "p1"))
		p2 := units.AbsolutePressure(rapid.Float64Range(1e5, 2e5).Draw(t, "p2"))
		w := ValveGasFlow(1, p1, p2, 0.75, nitrogen)
		q := ValveGasVolume(1, p1, p2, 0.75, nitrogen)
		assert.InDelta(t, w, q*nitrogen.MolarMass/22.414, 2e-3*w+1e-9)
	})
}

func TestValveGasFlowRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(1e5, 300e5).Draw(t, "p1")
		more := p * rapid.Float64Range(1, 2).Draw(t, "times")
		flow := func(pa, cv float64) float64 {
			return ValveGasFlow(units.FromCv(cv), units.AbsolutePressure(pa), openEnd, 0.75, nitrogen)
		}
		assert.LessOrEqual(t, flow(p, 0.06), flow(more, 0.06))
		assert.LessOrEqual(t, flow(p, 0.06), flow(p, 0.07))
	})
	assert.Zero(t, ValveGasFlow(1, openEnd, openEnd, 0.75, nitrogen))
	assert.Zero(t, ValveGasVolume(1, openEnd, openEnd, 0.75, nitrogen))
}
