package measure

import (
	"math"

	"lineworthy/check/units"
)

// chokedRoot is sqrt(k (2/(k+1))^((k+1)/(k-1))), the shape of choked flow of an ideal gas.
func chokedRoot(k float64) float64 {
	return math.Sqrt(k * math.Pow(2/(k+1), (k+1)/(k-1)))
}

// CriticalPressureRatio is p2/p1 at and below which a gas flows at the speed of sound: (2/(k+1))^(k/(k-1)), k above 1.
func CriticalPressureRatio(k float64) float64 { return math.Pow(2/(k+1), k/(k-1)) }

// CriticalTemperatureRatio is the temperature there over that before the orifice: 2/(k+1).
func CriticalTemperatureRatio(k float64) float64 { return 2 / (k + 1) }

// reliefC is the critical-flow constant of ISO 4126-7 (recalled; re-derived).
func reliefC(k float64) float64 { return 3.948 * chokedRoot(k) }

// ReliefCapacity is the critical gas flow in kg/h of a relief device of area a and certified coefficient kdr at the
// relieving pressure p1: ISO 4126-1 and -7 (recalled; constant re-derived). It overstates where the back pressure is above
// CriticalPressureRatio, as against the open for a set pressure below 0.9 bar(g): ask ReliefCapacityTo there.
func ReliefCapacity(a units.Area, kdr float64, p1 units.AbsolutePressure, g Gas) float64 {
	return float64(p1) / 1e5 * reliefC(g.K) * float64(a) * 1e6 * kdr * math.Sqrt(g.MolarMass/(g.Z*float64(g.T)))
}

// ReliefEquilibrium is the pressure at which a relief device passes flow w in kg/h: the same equation, solved for p1.
func ReliefEquilibrium(a units.Area, kdr, w float64, g Gas) units.AbsolutePressure {
	per := ReliefCapacity(a, kdr, 1e5, g)
	if per <= 0 {
		return units.AbsolutePressure(math.Inf(1))
	}
	return units.AbsolutePressure(w / per * 1e5)
}

// RelievingPressure adds the overpressure to the gauge set pressure before it adds the ambient.
func RelievingPressure(set units.GaugePressure, over units.Fraction, ambient units.AbsolutePressure) units.AbsolutePressure {
	return units.GaugePressure(float64(set) * (1 + float64(over))).Absolute(ambient)
}

// Overpressure is how far the accumulated pressure lies above the set pressure, as a part of the set pressure. It is
// infinite for a set pressure of zero or less.
func Overpressure(set, accumulated units.GaugePressure) float64 {
	if set <= 0 {
		return math.Inf(1)
	}
	return float64(accumulated-set) / float64(set)
}
