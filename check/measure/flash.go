package measure

import "math"

// FlashFraction is the part of a liquid that flashes off when it is let down to its boiling point: the fall of its
// enthalpy over the latent heat there, all in J/kg (Crowl & Louvar, Chemical Process Safety, recalled). Aerosol comes on
// top of it.
func FlashFraction(before, boiling, latent float64) float64 {
	return math.Max((before-boiling)/latent, 0)
}

// FlashFractionCp is cp (T0 - Tb)/L (same book, recalled).
func FlashFractionCp(heatCapacity, superheatK, latent float64) float64 {
	return math.Max(heatCapacity*superheatK/latent, 0)
}

// FlashFractionExp is 1 - exp(-cp (T0 - Tb)/L), for a liquid that boils down (same book, recalled).
func FlashFractionExp(heatCapacity, superheatK, latent float64) float64 {
	return 1 - math.Exp(-FlashFractionCp(heatCapacity, superheatK, latent))
}
