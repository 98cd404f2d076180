package measure

import "lineworthy/check/units"

// Pocket is a closed section that holds some gas besides its liquid.
type Pocket struct {
	Gas             units.Fraction // of the volume when shut
	P0              units.AbsolutePressure
	T0              units.Temperature
	Expansion       float64 // of the liquid, cubic, 1/K
	Compressibility float64 // of the liquid, 1/Pa
	Container       Container
}

// GasPocket is the pressure at t1 (computed): liquid and ideal gas share the room. No credit may be taken for a pocket in
// a verdict, because small ones dissolve or collapse (API 521 5.14.4.1, published); this shows how much hangs on it.
// A section that would exceed 10 000 bar is an OutsideError.
func GasPocket(s Pocket, t1 units.Temperature) (units.AbsolutePressure, error) {
	const top = 1e9
	rise, gas := float64(t1-s.T0), float64(s.Gas)
	tight := func(pa float64) float64 {
		dp := pa - float64(s.P0)
		liquid := (1 - gas) * (1 + s.Expansion*rise - s.Compressibility*dp)
		return liquid + gas*float64(s.P0)/pa*float64(t1/s.T0) - 1 - s.Container.Expansion*rise - s.Container.Compliance*dp
	}
	if tight(top) > 0 {
		return 0, &OutsideError{"a gas pocket", "Pa", top, float64(s.P0), top}
	}
	return units.AbsolutePressure(bisect(1, top, tight)), nil
}

// HeatingRelief is the flow that a warming liquid pushes out of a full section: a Phi/(1000 d c), API 521 5.14 (published
// in US units; SI form derived). heat is what the section takes up; heatCapacity in J/(kg K).
func HeatingRelief(expansion float64, heat units.Power, rho units.Density, heatCapacity float64) units.VolumeFlow {
	return units.VolumeFlow(expansion * float64(heat) / (float64(rho) * heatCapacity))
}
