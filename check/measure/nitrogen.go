package measure

import "lineworthy/check/units"

// The range of the nitrogen functions: gas of one phase, well within the 63..1000 K and 2200 MPa of the equation of state.
const (
	nitrogenFromK, nitrogenToK = 150.0, 600.0
	nitrogenToBar              = 1000.0
)

func nitrogenRange(p units.AbsolutePressure, t units.Temperature) error {
	if err := outside("nitrogen gas", "K", float64(t), nitrogenFromK, nitrogenToK); err != nil {
		return err
	}
	return outside("nitrogen gas", "bar(a)", float64(p)/1e5, 1e-3, nitrogenToBar)
}

// NitrogenZ is the compressibility of nitrogen, of the equation of state of Span et al. 2000 (computed). Outside
// 150..600 K or 0.001..1000 bar absolute the error is an OutsideError.
func NitrogenZ(p units.AbsolutePressure, t units.Temperature) (float64, error) {
	if err := nitrogenRange(p, t); err != nil {
		return 0, err
	}
	return float64(p) / (nitrogenDensity(float64(t), float64(p)) * nitrogenR * float64(t)), nil
}

// NitrogenDensity is the density of nitrogen gas; range and errors as NitrogenZ.
func NitrogenDensity(p units.AbsolutePressure, t units.Temperature) (units.Density, error) {
	if err := nitrogenRange(p, t); err != nil {
		return 0, err
	}
	return units.Density(nitrogenDensity(float64(t), float64(p)) * nitrogenMolarMass), nil
}

// HotNitrogen is the pressure of a closed rigid cylinder of nitrogen taken from t0 to t1, whose density stays. Range and
// errors as NitrogenZ.
func HotNitrogen(p units.AbsolutePressure, t0, t1 units.Temperature) (units.AbsolutePressure, error) {
	if err := nitrogenRange(p, t0); err != nil {
		return 0, err
	}
	if err := nitrogenRange(p, t1); err != nil {
		return 0, err
	}
	hot := units.AbsolutePressure(nitrogenPressure(float64(t1), nitrogenDensity(float64(t0), float64(p))))
	return hot, nitrogenRange(hot, t1)
}

// HotIdealGas is the pressure of a closed volume of gas taken from t0 to t1 as an ideal gas. For cylinders of nitrogen
// it understates (225 against 236 bar from 15 to 50 °C), so it is used only where no equation is held, with a note.
func HotIdealGas(p units.AbsolutePressure, t0, t1 units.Temperature) units.AbsolutePressure {
	return units.AbsolutePressure(float64(p) * float64(t1) / float64(t0))
}
