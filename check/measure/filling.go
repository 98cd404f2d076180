package measure

import "lineworthy/check/units"

// MeanExpansion is the cubic expansion that ADR means: (d15 - d50)/(35 d50), 4.2.1.9.2 (published).
func MeanExpansion(at15, at50 units.Density) float64 {
	return float64(at15-at50) / (35 * float64(at50))
}

// MeanExpansionAPI is API 521 5.14.4 equation (4): (rho1^2 - rho2^2)/(2 (T2 - T1) rho1 rho2) (published).
func MeanExpansionAPI(cold, hot units.Density, rise units.TemperatureDifference) float64 {
	return float64(cold*cold-hot*hot) / (2 * float64(rise) * float64(cold*hot))
}

// MeanExpansionSymmetric is the difference over the mean density (computed).
func MeanExpansionSymmetric(cold, hot units.Density, rise units.TemperatureDifference) float64 {
	return 2 * float64(cold-hot) / (float64(rise) * float64(cold+hot))
}

// reference50 is the reference temperature of the filling rules, 50 °C in K.
const reference50 units.Temperature = 323.15

// degree is top/(1 + a (50 °C - t)).
func degree(top, expansion float64, filling units.Temperature) units.Fraction {
	return units.Fraction(top / (1 + expansion*float64(reference50-filling)))
}

// PortableTankFill is the degree of filling of ADR 4.2.1.9.2: 97 %/(1 + a (50 - tf)) (published). It keeps liquid from
// filling the tank at 50 °C; it does not limit the pressure of a padded tank.
func PortableTankFill(expansion float64, filling units.Temperature) units.Fraction {
	return degree(0.97, expansion, filling)
}

// PortableTankFillToxic has 95 % in place of 97 %: ADR 4.2.1.9.3, some classes (recalled).
func PortableTankFillToxic(expansion float64, filling units.Temperature) units.Fraction {
	return degree(0.95, expansion, filling)
}

// PackagingFill is the degree of filling of ADR 4.1.1.4: 98 %/(1 + a (50 - tf)) (published). A packaging must besides not
// be full at 55 °C.
func PackagingFill(expansion float64, filling units.Temperature) units.Fraction {
	return degree(0.98, expansion, filling)
}

// LiquefiedGasFill is the mass per volume of a tank for a low-pressure liquefied gas: ADR 4.3.3.2.2 (published), 0.95 of
// the density at 50 °C, and no more than what leaves vapour up to 60 °C.
func LiquefiedGasFill(at50, at60 units.Density) units.Density { return min(0.95*at50, at60) }
