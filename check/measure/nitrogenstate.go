package measure

import "math"

// nitrogenPressure is in Pa at a temperature in K and a density in mol/m3.
func nitrogenPressure(k, rho float64) float64 {
	return rho * nitrogenR * k * (1 + nitrogenResidual(k, rho).d)
}

// nitrogenSteps is the most it takes: guarded Newton steps from the ideal gas settle to the last digit in fewer.
const nitrogenSteps = 14

// nitrogenDensity is in mol/m3 above the critical temperature, where one density belongs to each pressure.
func nitrogenDensity(k, pa float64) float64 {
	low, high := 0.0, 40000.0
	rho := math.Min(pa/nitrogenR/k, high/2)
	var p nitrogenPowers
	p.warm(nitrogenTc / k)
	for range nitrogenSteps {
		r := p.residual(rho)
		miss := rho*nitrogenR*k*(1+r.d) - pa
		if miss > 0 {
			high = rho
		} else {
			low = rho
		}
		next := rho - miss/(nitrogenR*k*(1+2*r.d+r.dd))
		if !(next >= low && next <= high) {
			next = (low + high) / 2
		}
		if math.Abs(next-rho) <= 1e-14*rho {
			return next
		}
		rho = next
	}
	return rho
}

// The ideal part of the equation, same paper (recalled): 2.5, -12.76952708, -0.00784163, -1.934819e-4, -1.247742e-5,
// 6.678326e-8, and one vibration of weight 1.012941 at 26.65788.
func nitrogenIdeal(tau float64) (a, t float64) {
	const weight, at = 1.012941, 26.65788
	x := math.Exp(-at * tau)
	a = 2.5*math.Log(tau) - 12.76952708 - 0.00784163*tau - 1.934819e-4/tau - 1.247742e-5/(tau*tau) +
		6.678326e-8/(tau*tau*tau) + weight*math.Log(1-x)
	t = 2.5 - 0.00784163*tau + 1.934819e-4/tau + 2*1.247742e-5/(tau*tau) - 3*6.678326e-8/(tau*tau*tau) +
		weight*at*tau*x/(1-x)
	return a, t
}

// nitrogenEntropy is in J/(mol K).
func nitrogenEntropy(k, rho float64) float64 {
	a, t := nitrogenIdeal(nitrogenTc / k)
	r := nitrogenResidual(k, rho)
	return nitrogenR * (t + r.t - a - math.Log(rho/nitrogenRhoc) - r.a)
}

// nitrogenEnthalpy is in J/mol.
func nitrogenEnthalpy(k, rho float64) float64 {
	_, t := nitrogenIdeal(nitrogenTc / k)
	r := nitrogenResidual(k, rho)
	return nitrogenR * k * (1 + t + r.t + r.d)
}

// nitrogenIsentrope is the density in mol/m3 at k on the isentrope of entropy s, by guarded Newton steps in ln(rho).
func nitrogenIsentrope(k, s, guess float64) float64 {
	rho := guess
	for range 8 {
		r := nitrogenResidual(k, rho)
		slope := nitrogenR * (r.dt - 1 - r.d) // ds/d ln(rho)
		step := (s - nitrogenEntropy(k, rho)) / slope
		rho *= math.Exp(math.Max(-0.5, math.Min(0.5, step)))
	}
	return rho
}
