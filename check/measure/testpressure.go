package measure

import "lineworthy/check/units"

// HydrostaticTest is 1.5 P S_T/S: ASME B31.3 345.4.2 (recalled). stressRatio is the allowable stress at test temperature
// over that at design temperature, 1 or more. Hoses follow their own standard (ISO 1402), not this.
func HydrostaticTest(design units.GaugePressure, stressRatio float64) units.GaugePressure {
	return units.GaugePressure(1.5 * float64(design) * stressRatio)
}

// PneumaticTest is the span of 1.1 to 1.33 P: ASME B31.3 345.5 (recalled).
func PneumaticTest(design units.GaugePressure) (low, high units.GaugePressure) {
	return design * 1.1, design * 1.33
}

// PEDTest is the greater of 1.43 PS and 1.25 PS times the stress ratio: PED 2014/68/EU Annex I 7.4 (recalled).
func PEDTest(allowable units.GaugePressure, stressRatio float64) units.GaugePressure {
	return units.GaugePressure(float64(allowable) * max(1.43, 1.25*stressRatio))
}
