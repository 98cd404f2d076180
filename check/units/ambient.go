package units

import (
	"fmt"
	"math"
)

const (
	lowestAltitudeM  = -500
	highestAltitudeM = 11000
	earthRadiusM     = 6356766 // ISO 2533:1975, effective radius; recalled
)

// Ambient is the air pressure at a geopotential altitude of -500..11 000 m; others are
// an error. Troposphere formula of ISO 2533:1975 and the US Standard Atmosphere 1976
// (recalled). Weather moves the real pressure by up to about 5 %.
func Ambient(altitude Length) (AbsolutePressure, error) {
	h := float64(altitude)
	if !(h >= lowestAltitudeM && h <= highestAltitudeM) {
		return 0, fmt.Errorf("altitude %s is outside -500 m to 11000 m, where the standard atmosphere holds", altitude.Format("m"))
	}
	return StandardAtmosphere * AbsolutePressure(math.Pow(1-2.25577e-5*h, 5.25588)), nil
}

// Geopotential turns a height above sea level, as maps give it, into the geopotential
// height of the formula (ISO 2533:1975; recalled). Below 5 km they differ by under 0.1 %.
func Geopotential(height Length) Length {
	return earthRadiusM * height / (earthRadiusM + height)
}
