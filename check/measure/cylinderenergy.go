package measure

import "lineworthy/check/units"

// CylinderEnergy is the fall of the internal energy of real nitrogen along the isentrope from p and t to ambient pressure,
// taken as a gas to the end (computed, Span et al. 2000). Equilibrium condensation would add 5 % from 200 bar; GasEnergy
// lies 30 % above it, on the safe side. Errors as NitrogenZ; t below 230 K is an OutsideError.
func CylinderEnergy(p units.AbsolutePressure, t units.Temperature, v units.Volume) (units.Energy, error) {
	if err := nitrogenRange(p, t); err != nil {
		return 0, err
	}
	if err := outside("the energy of nitrogen", "K", float64(t), 230, nitrogenToK); err != nil {
		return 0, err
	}
	k, rho := float64(t), nitrogenDensity(float64(t), float64(p))
	s := nitrogenEntropy(k, rho)
	end := bisect(50, k, func(k float64) float64 { return nitrogenEntropy(k, nitrogenDensity(k, normalPa)) - s })
	fall := nitrogenEnergy(k, rho) - nitrogenEnergy(end, nitrogenDensity(end, normalPa))
	return units.Energy(max(fall*rho*float64(v), 0)), nil
}

// nitrogenEnergy is the internal energy in J/mol.
func nitrogenEnergy(k, rho float64) float64 {
	return nitrogenEnthalpy(k, rho) - nitrogenPressure(k, rho)/rho
}
