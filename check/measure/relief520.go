package measure

import (
	"math"

	"lineworthy/check/units"
)

// ReliefFactors are the coefficients of API 520-1. An effective Kd (0.975 gas, 0.65 liquid) goes with the effective area
// of API 526, a certified one with the actual area: never one with the other.
type ReliefFactors struct {
	Kd float64 // discharge
	Kb float64 // back pressure of a bellows valve, gas
	Kw float64 // back pressure of a bellows valve, liquid
	Kc float64 // bursting disc before the valve
	Kv float64 // viscosity
}

// ReliefArea is the area for w kg/h of gas at critical flow and the relieving pressure p1: API 520-1 (restated).
func ReliefArea(wKgPerH float64, f ReliefFactors, p1 units.AbsolutePressure, g Gas) units.Area {
	c := 0.03948 * chokedRoot(g.K)
	mm2 := wKgPerH / (c * f.Kd * f.Kb * f.Kc * float64(p1) / 1e3) * math.Sqrt(float64(g.T)*g.Z/g.MolarMass)
	return units.Area(mm2 * 1e-6)
}

// ReliefAreaSubcritical is ReliefArea against a back pressure p2 above the critical ratio: API 520-1 (restated).
func ReliefAreaSubcritical(wKgPerH float64, f ReliefFactors, p1, p2 units.AbsolutePressure, g Gas) units.Area {
	r, k := float64(p2/p1), g.K
	f2 := math.Sqrt(k / (k - 1) * math.Pow(r, 2/k) * (1 - math.Pow(r, (k-1)/k)) / (1 - r))
	kPa2 := float64(p1) * float64(p1-p2) / 1e6
	mm2 := 17.9 * wKgPerH / (f2 * f.Kd * f.Kc) * math.Sqrt(float64(g.T)*g.Z/(g.MolarMass*kPa2))
	return units.Area(mm2 * 1e-6)
}

// ReliefAreaLiquid is the area for q of liquid of relative density g from p1 to p2: API 520-1 (restated; the constant
// 11.78 re-derived).
func ReliefAreaLiquid(q units.VolumeFlow, relativeDensity float64, f ReliefFactors, p1, p2 units.AbsolutePressure) units.Area {
	kPa, litresPerMinute := float64(p1-p2)/1e3, float64(q)*6e4
	mm2 := 11.78 * litresPerMinute / (f.Kd * f.Kw * f.Kc * f.Kv) * math.Sqrt(relativeDensity/kPa)
	return units.Area(mm2 * 1e-6)
}

// ReliefReynolds is the Reynolds number of API 520-1 at an orifice of area a: 18800 Q G/(mu sqrt(A)) (recalled).
func ReliefReynolds(q units.VolumeFlow, relativeDensity float64, mu units.Viscosity, a units.Area) float64 {
	return 18800 * float64(q) * 6e4 * relativeDensity / (float64(mu) * 1e3 * math.Sqrt(float64(a)*1e6))
}

// ReliefViscosity is Kv of API 520-1, 10th edition, (1 + 170/Re)^-0.5 (recalled).
func ReliefViscosity(reynolds float64) float64 { return 1 / math.Sqrt(1+170/reynolds) }
