package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// ASME VIII-1 UG-125(c) (published text of 1992; fire recalled) and PED Annex I 7.3 (recalled): below, at and past the
// pressure where the least in psi gives way to the part.
func TestAllowedAccumulation(t *testing.T) {
	for _, c := range []struct {
		basis measure.AccumulationBasis
		psig  units.GaugePressure
		want  float64
	}{
		{measure.ASMESingle, 20, 23}, {measure.ASMESingle, 30, 33}, {measure.ASMESingle, 100, 110},
		{measure.ASMEMultiple, 20, 24}, {measure.ASMEMultiple, 25, 29}, {measure.ASMEMultiple, 100, 116},
		{measure.ASMEFire, 100, 121}, {measure.PED, 10, 11}, {measure.PED, 100, 110},
	} {
		near(t, c.want, no(measure.AllowedAccumulation(c.basis, c.psig*psi))/psi, 1e-12)
	}
	_, err := measure.AllowedAccumulation("hose", 1e5)
	assert.ErrorContains(t, err, `"PED"`)
}

// ADR 6.7.2.9.1 (published), 6.7.2.12.2 (recalled).
func TestTankStart(t *testing.T) {
	for test, want := range map[units.GaugePressure]float64{3e5: 2.5e5, 4.5e5: 3.75e5, 6e5: 4.4e5} {
		near(t, want, measure.TankStartToDischarge(test), 1e-12)
		near(t, 1.2*want, measure.TankFullFire(test), 1e-12)
	}
}

// ASME VIII-1 UG-134(d) (restated).
func TestSetTolerance(t *testing.T) {
	for set, want := range map[units.GaugePressure]float64{50: 2, 70: 2, 71: 2.13, 100: 3} {
		near(t, want, measure.SetTolerance(set*psi)/psi, 1e-12)
	}
}
