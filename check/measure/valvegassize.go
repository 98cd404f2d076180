package measure

import (
	"math"

	"lineworthy/check/units"
)

// ValveBody is a control valve between reducers. A zero Inlet or Outlet means the pipe is of the valve's size.
type ValveBody struct {
	XT            float64 // pressure drop ratio of choked flow
	Bore          units.Length
	Inlet, Outlet units.Length // bores of the pipes
}

// Numerical constants N2 and N5 of IEC 60534-2-1:2011 for Kv and mm (restated).
const (
	n2 = 1.6e-3
	n5 = 1.8e-3
)

// losses are the velocity head losses of the reducers, all and those of the inlet: IEC 60534-2-1:2011, 5.2 (restated).
func (v ValveBody) losses() (all, inlet float64) {
	if v.Inlet > 0 {
		r := math.Pow(float64(v.Bore/v.Inlet), 2)
		inlet = 0.5*(1-r)*(1-r) + 1 - r*r
	}
	all = inlet
	if v.Outlet > 0 {
		r := math.Pow(float64(v.Bore/v.Outlet), 2)
		all += (1-r)*(1-r) - (1 - r*r)
	}
	return all, inlet
}

// GasValveSize is the coefficient that passes q m3/h (at 0 °C and 1 atm) of gas from p1 to p2, turbulent:
// IEC 60534-2-1:2011 (restated). With reducers it repeats until the coefficient moves by less than one per cent, as the
// standard's chart does, at most 20 times. Sizing is the valve maker's business: with a source, ask ValveGasFlow.
func GasValveSize(qNormalM3PerH float64, p1, p2 units.AbsolutePressure, v ValveBody, g Gas) units.FlowCoefficient {
	x, y := xDrop(p1, p2, v.XT, g.K)
	bare := qNormalM3PerH / (n9Kv * float64(p1) / 1e3 * y) * math.Sqrt(g.MolarMass*float64(g.T)*g.Z)
	c := bare / math.Sqrt(x)
	all, inlet := v.losses()
	if all == 0 && inlet == 0 {
		return units.FromKv(c)
	}
	for range 20 {
		next := v.next(c, bare, p1, p2, g.K)
		done := c/next >= 0.99
		c = next
		if done {
			break
		}
	}
	return units.FromKv(c)
}

// next is the coefficient with the piping factor Fp and the choked ratio xTP that the last one c gives (same clause). bare
// is the coefficient without its pressure ratio.
func (v ValveBody) next(c, bare float64, p1, p2 units.AbsolutePressure, k float64) float64 {
	all, inlet := v.losses()
	s := math.Pow(c/math.Pow(float64(v.Bore)*1e3, 2), 2)
	fp2 := 1 / (1 + all/n2*s)
	x, _ := xDrop(p1, p2, v.XT/fp2/(1+v.XT*inlet/n5*s), k)
	return bare / math.Sqrt(fp2*x)
}
