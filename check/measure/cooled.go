package measure

import "lineworthy/check/units"

// Cooled is the pressure in a closed rigid room of gas and vapour that was shut at hot under total pressure p and cools to
// cold: Dalton, the gas by its temperature, the vapour at its own pressure of the two ends (computed). Where the vapour
// alone made up p there is no gas, and only the vapour's cold pressure is left.
func Cooled(p, vapourHot, vapourCold units.AbsolutePressure, hot, cold units.Temperature) units.AbsolutePressure {
	gas := max(p-vapourHot, 0)
	return gas*units.AbsolutePressure(cold/hot) + min(vapourCold, max(p, vapourHot))
}
