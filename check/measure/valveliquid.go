package measure

import (
	"math"

	"lineworthy/check/units"
)

// waterAt15 is the density of water at 15 °C in kg/m3, the reference of relative density in IEC 60534-2-1 (restated).
const waterAt15 = 999.10329

// CriticalRatio60534 is FF, the pressure in the vena contracta over the vapour pressure when a liquid chokes:
// IEC 60534-2-1:2011 (restated), FF = 0.96 - 0.28 sqrt(pv/pc).
func CriticalRatio60534(vapour, critical units.AbsolutePressure) float64 {
	return 0.96 - 0.28*math.Sqrt(float64(vapour/critical))
}

// ChokedDrop is the pressure difference beyond which the flow of a liquid no longer grows: FL^2 (p1 - FF pv),
// IEC 60534-2-1:2011 (restated). fl is the valve's liquid pressure recovery factor.
func ChokedDrop(p1, vapour, critical units.AbsolutePressure, fl float64) units.PressureDifference {
	ff := CriticalRatio60534(vapour, critical)
	return units.PressureDifference(fl * fl * (float64(p1) - ff*float64(vapour)))
}

// LiquidValveSize is the coefficient that passes q of liquid from p1 to p2, turbulent, without reducers:
// IEC 60534-2-1:2011 (restated). Give ChokedDrop as the limit.
func LiquidValveSize(q units.VolumeFlow, rho units.Density, p1, p2 units.AbsolutePressure, choked units.PressureDifference) units.FlowCoefficient {
	bar := math.Min(float64(p1-p2), float64(choked)) / 1e5
	return units.FromKv(float64(q) * 3600 * math.Sqrt(float64(rho)/waterAt15/bar))
}

// CavitationIndex is sigma = (p1 - pv)/(p1 - p2): ISA RP75.23 (restated). It is infinite without a pressure difference.
func CavitationIndex(p1, p2, vapour units.AbsolutePressure) float64 {
	if p1 <= p2 {
		return math.Inf(1)
	}
	return float64(p1-vapour) / float64(p1-p2)
}
