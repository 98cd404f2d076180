package measure

import (
	"math"

	"lineworthy/check/units"
)

// steamN are the coefficients of the saturation line of water, IAPWS-IF97 region 4, equations 29 to 31 (IAPWS R7-97,
// 2012 text; recalled).
var steamN = [10]float64{
	0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
	0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
}

// The saturation line: from the triple point to the critical point, in K and Pa.
const (
	steamFromK, steamToK   = 273.15, 647.096
	steamFromPa, steamToPa = 611, 22.0641e6
)

// SteamPressure is the pressure of saturated steam at t, from 0 °C to the critical point: IAPWS-IF97 equation 30.
func SteamPressure(t units.Temperature) (units.AbsolutePressure, error) {
	if err := outside("the pressure of saturated steam", "°C", t.Celsius(), steamFromK-273.15, steamToK-273.15); err != nil {
		return 0, err
	}
	n := &steamN
	x := float64(t) + n[8]/(float64(t)-n[9])
	a, b, c := x*x+n[0]*x+n[1], n[2]*x*x+n[3]*x+n[4], n[5]*x*x+n[6]*x+n[7]
	return units.AbsolutePressure(math.Pow(2*c/(-b+math.Sqrt(b*b-4*a*c)), 4) * 1e6), nil
}

// SteamTemperature is the temperature of saturated steam at p, from 611 Pa to the critical point: IAPWS-IF97 equation 31.
func SteamTemperature(p units.AbsolutePressure) (units.Temperature, error) {
	if err := outside("the temperature of saturated steam", "kPa", float64(p)/1e3, steamFromPa/1e3, steamToPa/1e3); err != nil {
		return 0, err
	}
	n, y := &steamN, math.Pow(float64(p)/1e6, 0.25)
	e, f, g := y*y+n[2]*y+n[5], n[0]*y*y+n[3]*y+n[6], n[1]*y*y+n[4]*y+n[7]
	d := 2 * g / (-f - math.Sqrt(f*f-4*e*g))
	return units.Temperature((n[9] + d - math.Sqrt((n[9]+d)*(n[9]+d)-4*(n[8]+n[9]*d))) / 2), nil
}
