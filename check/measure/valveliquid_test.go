package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// Restated: IEC 60534-2-1 examples 1 and 2, water at 965.4 kg/m3, by an open library's check.
func TestV2_5(t *testing.T) {
	const pv, pc, p1, p2 = 70.1e3, 22120e3, 680e3, 220e3
	near(t, 0.944238, measure.CriticalRatio60534(pv, pc), 1e-6)
	for fl, want := range map[float64]float64{0.9: 164.9955, 0.6: 238.0582} {
		kv := measure.LiquidValveSize(0.1, 965.4, p1, p2, measure.ChokedDrop(p1, pv, pc, fl)).Kv()
		near(t, want, kv, 1e-6)
	}
}

// Restated: Crane TP-410 examples 7.27 and 7.28, by an open library's notebook. The choked pressure is met to 1e-3. The
// Cv of 250 gal/min is not: 79.859 from the pressures as given, 1.0e-3 below the print (79.94) and 1.9e-3 below the
// library (80.008). Pressures given to 0.1 psi leave 0.5 %, and both figures lie within that. No constant explains it: the
// standard's own rounded factors give 79.857, the handbook's 7.90 gives 79.85 at most. A difference of 9.78 psi, which
// rounds to the 9.8 given, prints as 79.94; but that is solved backwards and proves nothing.
func TestV5_8(t *testing.T) {
	const pv, pc = 4.75 * psi, 3198 * psi
	choked := measure.ChokedDrop(80.6*psi, pv, pc, 0.9)
	near(t, 18.966, (80.6*psi-choked)/psi, 1e-3)
	q := units.VolumeFlow(250 * gallon / 60)
	cv := func(p1, p2 units.AbsolutePressure) float64 {
		return measure.LiquidValveSize(q, 999.10329, p1*psi, p2*psi, choked).Cv()
	}
	assert.Less(t, cv(80.65, 70.75), 79.94)
	assert.Greater(t, cv(80.55, 70.85), 80.008)
	prints(t, 79.86, cv(80.6, 70.8), 2) // 250/sqrt(9.8), by the definition of Cv
}

// Restated: the definition of ISA RP75.23.
func TestV5_10(t *testing.T) {
	within(t, 4.0, measure.CavitationIndex(10*bar, 8*bar, 2*bar), 1e-12)
	assert.True(t, math.IsInf(measure.CavitationIndex(8*bar, 8*bar, 2*bar), 1))
}

// Computed: acetone at 40 °C from 3 bar absolute.
func TestV5_15(t *testing.T) {
	near(t, 0.92925, measure.CriticalRatio60534(56.58e3, 4.692e6), 1e-4)
	prints(t, 2.004, measure.ChokedDrop(3*bar, 56.58e3, 4.692e6, 0.9)/bar, 3)
}
