package measure

import (
	"fmt"

	"lineworthy/check/units"
)

// AccumulationBasis names who grants the protected vessel a pressure above its own while relief flows. A hose has no such
// grant unless its standard gives one.
type AccumulationBasis string

// The bases known.
const (
	ASMESingle   AccumulationBasis = "ASME VIII-1, one device"
	ASMEMultiple AccumulationBasis = "ASME VIII-1, several devices"
	ASMEFire     AccumulationBasis = "ASME VIII-1, fire"
	PED          AccumulationBasis = "PED"
)

// accumulations are the part of the gauge pressure granted and the least in Pa.
// ASME VIII-1 UG-125(c), 1992 text: 10 % or 3 psi, 16 % or 4 psi (published), fire 21 % (recalled); now in Section XIII
// (recalled). PED 2014/68/EU Annex I 7.3: 10 % for a short time (recalled).
var accumulations = map[AccumulationBasis]struct{ part, leastPa float64 }{
	ASMESingle:   {0.10, 3 * psi},
	ASMEMultiple: {0.16, 4 * psi},
	ASMEFire:     {0.21, 0},
	PED:          {0.10, 0},
}

// psi is one pound-force per square inch in Pa (exact to the digits given).
const psi = 6894.757293168

// AllowedAccumulation is the highest pressure the basis allows while relief flows. A basis not named here is an error.
func AllowedAccumulation(b AccumulationBasis, allowable units.GaugePressure) (units.GaugePressure, error) {
	a, ok := accumulations[b]
	if !ok {
		return 0, fmt.Errorf("accumulation basis %q is not known: give %q, %q, %q or %q", b, ASMESingle, ASMEMultiple, ASMEFire, PED)
	}
	return allowable + units.GaugePressure(max(float64(allowable)*a.part, a.leastPa)), nil
}

// TankStartToDischarge is the pressure at which the relief of an ADR/UN portable tank starts, by its test pressure:
// 6.7.2.9.1 (published), 5/6 of it up to 4.5 bar, above that 110 % of two thirds.
func TankStartToDischarge(test units.GaugePressure) units.GaugePressure {
	if test <= 4.5e5 {
		return test * 5 / 6
	}
	return test * 2 / 3 * 1.1
}

// TankFullFire is the highest pressure in fire, 20 % above the start: ADR 6.7.2.12.2 (recalled).
func TankFullFire(test units.GaugePressure) units.GaugePressure {
	return TankStartToDischarge(test) * 1.2
}

// SetTolerance is how far a relief valve may open from its set pressure: ASME VIII-1 UG-134(d), 2 psi up to 70 psi, 3 %
// above (restated; now in Section XIII).
func SetTolerance(set units.GaugePressure) units.PressureDifference {
	if set <= 70*psi {
		return 2 * psi
	}
	return units.PressureDifference(0.03 * float64(set))
}
