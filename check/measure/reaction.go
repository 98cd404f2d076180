package measure

import (
	"math"

	"lineworthy/check/units"
)

// GasReaction is the thrust of an open end of area a that vents gas at critical flow from p0: A [p* (1 + k) - pa]
// (computed). A restraint sized on p* A alone is short by a quarter; double it for the sudden load (DLF 2, API 520-2
// worksheet, restated).
func GasReaction(p0, ambient units.AbsolutePressure, a units.Area, k float64) units.Force {
	throat := float64(p0) * CriticalPressureRatio(k)
	return units.Force(math.Max(float64(a)*(throat*(1+k)-float64(ambient)), 0))
}

// GasReactionAPI is the form of API 520-2 (recalled; its constant re-derived as sqrt(2000 R) = 128.95):
// 129 W sqrt(k T/((k+1) M)) + 0.1 A P, W in kg/s, T before the opening, P the gauge pressure in the opening.
func GasReactionAPI(wKgPerS float64, g Gas, a units.Area, opening units.GaugePressure) units.Force {
	momentum := 129 * wKgPerS * math.Sqrt(g.K*float64(g.T)/((g.K+1)*g.MolarMass))
	return units.Force(momentum + 0.1*float64(a)*1e6*float64(opening)/1e5)
}

// LiquidReaction is the thrust of an open end that spills liquid: 2 A dp, the ideal bound (computed).
func LiquidReaction(dp units.PressureDifference, a units.Area) units.Force {
	return units.Force(2 * float64(a) * float64(dp))
}
