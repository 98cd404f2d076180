package measure

import (
	"math"

	"lineworthy/check/units"
)

// GasPipe is a run of one bore that carries gas at its own temperature.
type GasPipe struct {
	Bore       units.Length
	Resistance float64       // f L/D + sum K
	Inlet      units.Density // of the gas at the inlet
}

// IsothermalFlow is the mass flow in kg/s from p1 to p2: w^2 = A^2 rho1 p1 (1 - r^2)/(f L/D - 2 ln r), r = p2/p1, the
// isothermal equation of Crane TP-410 and others (restated). Below IsothermalChoke the flow does not grow, and so it is
// held there. A hose chokes before a nozzle would: take the smaller of this and the nozzle.
func IsothermalFlow(g GasPipe, p1, p2 units.AbsolutePressure) float64 {
	if p2 >= p1 {
		return 0
	}
	r := float64(max(p2, IsothermalChoke(p1, g.Resistance)) / p1)
	flux2 := float64(g.Inlet) * float64(p1) * (1 - r*r) / (g.Resistance - 2*math.Log(r))
	return float64(circle(g.Bore)) * math.Sqrt(flux2)
}

// gasConstant is that of every ideal gas, J/(mol K): CODATA 2018, exact since the SI of 2019 (recalled).
const gasConstant = 8.314462618

// BlowThrough is the flow of an ideal gas of molar mass m (g/mol) at temperature t through the pipe from p1 to p2, counted as
// free gas at 1 atm and 15 °C (computed from IsothermalFlow). The density in g is worked out here.
func BlowThrough(g GasPipe, p1, p2 units.AbsolutePressure, t units.Temperature, m float64) units.VolumeFlow {
	perKelvin := m / 1000 / gasConstant
	g.Inlet = units.Density(float64(p1) * perKelvin / float64(t))
	return units.VolumeFlow(IsothermalFlow(g, p1, p2) / (normalPa * perKelvin / normalK))
}

// IsothermalChoke is the outlet pressure of choked isothermal flow: (p1/p)^2 - 1 - 2 ln(p1/p) = f L/D (restated), by
// fixed-count bisection.
func IsothermalChoke(p1 units.AbsolutePressure, resistance float64) units.AbsolutePressure {
	r := bisect(1e-6, 1, func(r float64) float64 { return 1/(r*r) - 1 + 2*math.Log(r) - resistance })
	return p1 * units.AbsolutePressure(r)
}

// IsothermalDrop is the pressure loss of a mass flow in kg/s, by fixed-count bisection. A flow beyond choking is an
// OutsideError.
func IsothermalDrop(g GasPipe, p1 units.AbsolutePressure, kgPerS float64) (units.PressureDifference, error) {
	choke := IsothermalChoke(p1, g.Resistance)
	if err := outside("gas flow in the pipe", "kg/s", kgPerS, 0, IsothermalFlow(g, p1, choke)); err != nil {
		return 0, err
	}
	p2 := bisect(float64(choke), float64(p1), func(pa float64) float64 {
		return IsothermalFlow(g, p1, units.AbsolutePressure(pa)) - kgPerS
	})
	return units.PressureDifference(float64(p1) - p2), nil
}
