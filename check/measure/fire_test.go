package measure_test

import (
	"math"
	"testing"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// wattsUS turns a coefficient of A^0.82 in Btu/h and ft2 into W and m2 (Btu of 1055.056 J).
func wattsUS(coefficient float64) float64 {
	return coefficient * 1055.05585262 / 3600 / math.Pow(foot*foot, 0.82)
}

// US figure restated (an open page citing API 521), conversion computed. 43.19 is 43.2 as the SI text rounds it.
func TestV9_1(t *testing.T) {
	near(t, 43.19e3, wattsUS(21000), 1e-3)
	near(t, wattsUS(21000), measure.FireHeat(1, 1, true), 1e-3)
}

// The constant of API 521 without drainage and 12.4 of ADR 6.7.2.12.2.1, both recalled, confirm each other: 12.4 m3/s of
// air at 1 bar and 0 °C over the flow through 1 m2 per bar by the same clause's C of a gas with k = 1.
func TestV9_2(t *testing.T) {
	near(t, 70.96e3, wattsUS(34500), 2e-3)
	near(t, wattsUS(34500), measure.FireHeat(1, 1, false), 2e-3)
	near(t, 70.93, tankConstant(12.4), 2e-3)
}

// tankConstant turns ADR's constant of air flow into the kW behind it: the air volume that has the choked throat of the
// vapour, Q_air = W sqrt(ZT/M)/C_vapour x C_air sqrt(M_air/T_air)/rho_air, C = sqrt(k (2/(k+1))^((k+1)/(k-1))).
func tankConstant(constant float64) float64 {
	const air, kelvin, pa = 28.9647, 273.15, 1e5
	rho := pa * air / 1e3 / (8.314462618 * kelvin)
	root := math.Sqrt(1.4 * math.Pow(2/2.4, 6))
	return constant * rho / (root * math.Sqrt(air/kelvin))
}

func TestV9_3(t *testing.T) {
	for area, want := range map[units.Area]float64{2: 76.3, 5: 161.7, 10: 285.4} {
		near(t, want*1e3, measure.FireHeat(area, 1, true), 1e-3)
	}
}

// A fire of 76.3 kW on a liquid of 500 kJ/kg boils off 549 kg/h, half with F = 0.5; the air equivalent scales as ADR has it.
func TestFireRelief(t *testing.T) {
	near(t, 549.4, measure.FireRelief(measure.FireHeat(2, 1, true), 500e3), 1e-3)
	near(t, 274.7, measure.FireRelief(measure.FireHeat(2, 0.5, true), 500e3), 1e-3)
	g := measure.Gas{MolarMass: 44.1, K: 1.13, Z: 0.8, T: 340}
	near(t, 12.4*math.Pow(20, 0.82)/(300*0.63)*math.Sqrt(0.8*340/44.1), measure.TankFireAir(20, 1, 300, 0.63, g), 1e-12)
	near(t, measure.TankFireAir(20, 1, 300, 0.63, g)/2, measure.TankFireAir(20, 0.5, 300, 0.63, g), 1e-12)
}
