package measure

import (
	"math"

	"lineworthy/check/units"
)

// FireHeat is the heat a vessel takes up in a pool fire: 43.2 F A^0.82 kW with drainage and fire-fighting, 70.9 without,
// API 521 (recalled; the US figures restated). wetted is the wetted area (up to 7.6 m above ground, recalled), f 1 when
// bare. A screening figure; it does not replace a relief study.
func FireHeat(wetted units.Area, f float64, drained bool) units.Power {
	c := 70.9
	if drained {
		c = 43.2
	}
	return units.Power(c * 1e3 * f * math.Pow(float64(wetted), 0.82))
}

// FireRelief is the vapour to let off in kg/h: heat over latent heat in J/kg. It has no answer near the critical point,
// where the latent heat goes to zero.
func FireRelief(heat units.Power, latent float64) float64 { return float64(heat) / latent * 3600 }

// TankFireAir is the air equivalent in m3/s at 1 bar and 0 °C that the relief of an ADR/UN portable tank must pass:
// 12.4 F A^0.82/(L C) sqrt(Z T/M), 6.7.2.12.2.1 (recalled), L in kJ/kg, C the constant of the gas by the same clause.
func TankFireAir(surface units.Area, f, latentKJPerKg, c float64, g Gas) float64 {
	return 12.4 * f * math.Pow(float64(surface), 0.82) / (latentKJPerKg * c) * math.Sqrt(g.Z*float64(g.T)/g.MolarMass)
}
