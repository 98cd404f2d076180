package measure

import "math"

// Solubility are Hansen solubility parameters, MPa^0.5: dispersion, polar, hydrogen bonding.
type Solubility struct{ D, P, H float64 }

// SolubilityDistance is Ra between a liquid and the centre of a polymer's sphere, MPa^0.5:
// Ra2 = 4 dD2 + dP2 + dH2 (Hansen, Solubility Parameters: A User's Handbook, 2nd ed. 2007; restated).
func SolubilityDistance(a, b Solubility) float64 {
	return math.Sqrt(4*square(a.D-b.D) + square(a.P-b.P) + square(a.H-b.H))
}

func square(x float64) float64 { return x * x }

// RelativeDistance is RED = Ra / R0 of a liquid against the sphere of an elastomer; below 1 the liquid lies inside and
// swell is predicted. It is infinite when the sphere has no radius.
//
// It warns on one side only: inside means "predicted swell, soak test required"; outside means nothing. It says nothing
// of base attack, hydrolysis, oxidation, cracking or permeation, and does not hold for plastics, whose crystals resist
// what the sphere takes in: see the agreement table in the tests.
func RelativeDistance(liquid, centre Solubility, radius float64) float64 {
	if radius <= 0 {
		return math.Inf(1)
	}
	return SolubilityDistance(liquid, centre) / radius
}
