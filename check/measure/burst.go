package measure

import "lineworthy/check/units"

// BurstRatio is burst over working pressure; zero when there is no working pressure.
func BurstRatio(burst, working units.GaugePressure) float64 {
	if working <= 0 {
		return 0
	}
	return float64(burst) / float64(working)
}
