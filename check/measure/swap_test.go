package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// Each row works a vector with a gauge pressure taken for an absolute one (or back) and must miss it by more than its
// tolerance; off is what the slip takes away. With off at zero each row must meet its vector.
func TestGaugeForAbsoluteIsCaught(t *testing.T) {
	liquidKv := func(off units.AbsolutePressure) float64 {
		choked := measure.ChokedDrop(680e3-off, 70.1e3, 22120e3, 0.6)
		return measure.LiquidValveSize(0.1, 965.4, 680e3-off, 220e3-off, choked).Kv()
	}
	v := exact(t, padded(t, "acetone", 0.90), acetoneRho)
	for name, w := range map[string]struct {
		want, part float64
		got        func(off units.AbsolutePressure) float64
	}{
		"V2.1": {3699.05e-6, 2e-6, func(off units.AbsolutePressure) float64 {
			return float64(measure.ReliefArea(24270, factors, 670e3-off, example1))
		}},
		"V2.2": {4248.36e-6, 1e-6, func(off units.AbsolutePressure) float64 {
			return float64(measure.ReliefAreaSubcritical(24270, factors, 670e3-off, 532e3-off, example1))
		}},
		"V2.4": {72.5866, 1e-6, func(off units.AbsolutePressure) float64 { return gasKv(680e3-off, 310e3-off) }},
		"V2.5": {238.0582, 1e-6, liquidKv},
		"V2.9": {32.15e-6, 2e-3, func(off units.AbsolutePressure) float64 {
			return float64(measure.ReliefArea(open200, factors, relieved-off, air15))
		}},
		"V2.10": {89.84, 2e-3, func(off units.AbsolutePressure) float64 {
			return measure.ReliefCapacity(20*mm2, 0.7, relieved-off, air15)
		}},
		"V2.11": {224.60, 2e-3, func(off units.AbsolutePressure) float64 {
			return measure.ReliefCapacity(50*mm2, 0.7, relieved-off, air15)
		}},
		"V2.a": {124.7 * psi, 1e-3, func(off units.AbsolutePressure) float64 {
			return float64(no(measure.AllowedAccumulation(measure.ASMESingle, units.GaugePressure(100*psi-off))).Absolute(seaLevel))
		}},
		"V2.b": {4.035 * bar, 5e-3, func(off units.AbsolutePressure) float64 {
			v.Pad = 2*bar + seaLevel - off
			return float64(no(measure.HeatedVessel(v, c(40))).Pressure.Gauge(seaLevel))
		}},
		"V8.1": {11.208, 1e-3, func(off units.AbsolutePressure) float64 {
			return float64(no(measure.NitrogenMass(200*bar+seaLevel-off, c(15), 50*litre)))
		}},
	} {
		assert.LessOrEqual(t, math.Abs(w.got(0)/w.want-1), w.part, name)
		assert.Greater(t, math.Abs(w.got(seaLevel)/w.want-1), w.part, name)
	}
}

func gasKv(p1, p2 units.AbsolutePressure) float64 {
	body := measure.ValveBody{XT: 0.60, Bore: 0.05, Inlet: 0.08, Outlet: 0.1}
	return measure.GasValveSize(3800, p1, p2, body, measure.Gas{MolarMass: 44.01, K: 1.30, Z: 0.988, T: 433}).Kv()
}
