package measure

import (
	"math"

	"lineworthy/check/units"
)

// backFactor is the flow against the pressure ratio r over critical flow, 1 at and below the critical ratio: the ideal
// nozzle of ISO 4126-7 (recalled; re-derived).
func backFactor(r, k float64) float64 {
	if r <= CriticalPressureRatio(k) {
		return 1
	}
	flow := 2 * k / (k - 1) * (math.Pow(r, 2/k) - math.Pow(r, (k+1)/k))
	return math.Sqrt(math.Max(flow, 0)) / chokedRoot(k)
}

// ReliefCapacityTo is ReliefCapacity against a back pressure, which may be above the critical ratio; zero when it is not
// below p1.
func ReliefCapacityTo(a units.Area, kdr float64, p1, back units.AbsolutePressure, g Gas) float64 {
	if back >= p1 {
		return 0
	}
	return ReliefCapacity(a, kdr, p1, g) * backFactor(float64(back/p1), g.K)
}

// ReliefEquilibriumTo is the pressure at which the device passes w kg/h against the back pressure, by fixed-count
// bisection: never below ReliefEquilibrium.
func ReliefEquilibriumTo(a units.Area, kdr, wKgPerH float64, back units.AbsolutePressure, g Gas) units.AbsolutePressure {
	critical := ReliefEquilibrium(a, kdr, wKgPerH, g)
	if math.IsInf(float64(critical), 1) {
		return critical
	}
	return units.AbsolutePressure(bisect(float64(max(critical, back)), float64(critical+2*back), func(pa float64) float64 {
		return ReliefCapacityTo(a, kdr, units.AbsolutePressure(pa), back, g) - wKgPerH
	}))
}
