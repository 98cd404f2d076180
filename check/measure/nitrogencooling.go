package measure

import (
	"math"

	"lineworthy/check/units"
)

// NitrogenBlowdown is the temperature of the gas left in a cylinder drawn down from p0 to p1 without heat from the wall:
// the cold bound of a fast draw (computed, Span et al. 2000). A result below 130 K, where the gas could condense, is an
// OutsideError.
func NitrogenBlowdown(p0 units.AbsolutePressure, t0 units.Temperature, p1 units.AbsolutePressure) (units.Temperature, error) {
	s, err := nitrogenAt(p0, t0, nitrogenEntropy)
	if err != nil {
		return 0, err
	}
	return nitrogenCooled(p1, t0, s, nitrogenEntropy)
}

// NitrogenThrottled is the temperature behind a regulator that lets nitrogen from p0 down to p1 without heat from outside
// (computed, Span et al. 2000). Errors as NitrogenBlowdown.
func NitrogenThrottled(p0 units.AbsolutePressure, t0 units.Temperature, p1 units.AbsolutePressure) (units.Temperature, error) {
	h, err := nitrogenAt(p0, t0, nitrogenEnthalpy)
	if err != nil {
		return 0, err
	}
	return nitrogenCooled(p1, t0, h, nitrogenEnthalpy)
}

func nitrogenAt(p units.AbsolutePressure, t units.Temperature, what func(k, rho float64) float64) (float64, error) {
	if err := nitrogenRange(p, t); err != nil {
		return 0, err
	}
	return what(float64(t), nitrogenDensity(float64(t), float64(p))), nil
}

// coldestK keeps the search above the critical temperature of 126.2 K, where nothing condenses.
const coldestK = 130

func nitrogenCooled(p units.AbsolutePressure, t0 units.Temperature, want float64, what func(k, rho float64) float64) (units.Temperature, error) {
	if err := outside("nitrogen gas", "bar(a)", float64(p)/1e5, 1e-3, nitrogenToBar); err != nil {
		return 0, err
	}
	miss := func(k float64) float64 { return what(k, nitrogenDensity(k, float64(p))) - want }
	if miss(coldestK) > 0 {
		return 0, &OutsideError{"cooled nitrogen gas", "K", coldestK, coldestK, float64(t0)}
	}
	return units.Temperature(bisect(coldestK, float64(t0)+50, miss)), nil
}

// NitrogenSourceFactor is the choked flow of real nitrogen from p and t over that of an ideal gas with k = 1.4 and Z = 1:
// an isentropic nozzle by the equation of state of Span et al. 2000 (computed). The form with Z of IEC and API is lower by
// sqrt(Z). Errors as NitrogenZ; t below 230 K, whose throat could condense, is an OutsideError.
func NitrogenSourceFactor(p units.AbsolutePressure, t units.Temperature) (float64, error) {
	if err := nitrogenRange(p, t); err != nil {
		return 0, err
	}
	if err := outside("choked nitrogen", "K", float64(t), 230, nitrogenToK); err != nil {
		return 0, err
	}
	const k = 1.4
	ideal := float64(p) * chokedRoot(k) * math.Sqrt(nitrogenMolarMass/(nitrogenR*float64(t)))
	return nitrogenChoked(float64(p), float64(t)) / ideal, nil
}

// nitrogenChoked is the highest mass flux in kg/(m2 s) along the isentrope, by golden section on the throat temperature.
func nitrogenChoked(pa, k float64) float64 {
	rho := nitrogenDensity(k, pa)
	s, h := nitrogenEntropy(k, rho), nitrogenEnthalpy(k, rho)
	flux := func(throat float64) float64 {
		r := nitrogenIsentrope(throat, s, rho*math.Pow(throat/k, 2.5))
		drop := math.Max(h-nitrogenEnthalpy(throat, r), 0) / nitrogenMolarMass
		return r * nitrogenMolarMass * math.Sqrt(2*drop)
	}
	low, high := 0.6*k, k
	for range 40 {
		a, b := high-0.618034*(high-low), low+0.618034*(high-low)
		if flux(a) < flux(b) {
			low = a
		} else {
			high = b
		}
	}
	return flux((low + high) / 2)
}
