package measure

import "lineworthy/check/units"

// PaddedVessel is a closed vessel of liquid under a pad gas, as it was shut.
type PaddedVessel struct {
	Vapour, Density Equation
	MolarMass       float64                // g/mol, for the molar forms of density
	Fill            units.Fraction         // liquid in the volume at Shut
	Pad             units.AbsolutePressure // total pressure at Shut
	Shut            units.Temperature
	ShellExpansion  float64 // cubic, 1/K; 4.8e-5 for austenitic steel, three times 1.6e-5 (computed)
}

// Heated is the state of the vessel after heating.
type Heated struct {
	Pressure units.AbsolutePressure
	Ullage   units.Fraction // gas in the volume
}

// leastUllage is the part of gas below which the liquid's compressibility and dissolved gas, both left out here, decide
// the pressure (computed; practice).
const leastUllage = 0.03

// HeatedVessel is the pressure of the closed vessel at t: Dalton with the liquid's expansion, no gas dissolving, rigid
// shell (computed). Below 3 % ullage the numbers come with an OutsideError: only the risk of running liquid-full is then
// known. Once full there is no number at all.
func HeatedVessel(v PaddedVessel, t units.Temperature) (Heated, error) {
	ullage, err := v.ullage(t)
	if err != nil {
		return Heated{}, err
	}
	p, err := v.pressure(ullage, t)
	if err != nil {
		return Heated{}, err
	}
	short := outside("the pressure of a padded vessel", "of the volume as gas", ullage, leastUllage, 1)
	if ullage <= 0 {
		return Heated{}, short
	}
	return Heated{p, units.Fraction(ullage)}, short
}

// ullage is the part of gas in the volume at t, negative when the liquid has no room.
func (v PaddedVessel) ullage(t units.Temperature) (float64, error) {
	cold, err := LiquidDensity(v.Density, v.MolarMass, v.Shut)
	if err != nil {
		return 0, err
	}
	return v.ullageFrom(cold, t)
}

func (v PaddedVessel) ullageFrom(cold units.Density, t units.Temperature) (float64, error) {
	hot, err := LiquidDensity(v.Density, v.MolarMass, t)
	if err != nil {
		return 0, err
	}
	room := 1 + v.ShellExpansion*float64(t-v.Shut)
	return 1 - float64(v.Fill)*float64(cold/hot)/room, nil
}

func (v PaddedVessel) pressure(ullage float64, t units.Temperature) (units.AbsolutePressure, error) {
	cold, err := VapourPressure(v.Vapour, v.Shut)
	if err != nil {
		return 0, err
	}
	hot, err := VapourPressure(v.Vapour, t)
	if err != nil {
		return 0, err
	}
	room := 1 + v.ShellExpansion*float64(t-v.Shut)
	squeeze := (1 - float64(v.Fill)) / (ullage * room)
	gas := max(float64(v.Pad-cold), 0) * squeeze * float64(t/v.Shut)
	return units.AbsolutePressure(gas) + hot, nil
}

// LiquidFull is the temperature at which the liquid fills the vessel. When it does not within the range of the density
// equation, the error is an OutsideError.
func LiquidFull(v PaddedVessel) (units.Temperature, error) {
	left, err := v.ullage(v.Density.To)
	if err != nil {
		return 0, err
	}
	if left > 0 {
		return 0, &OutsideError{"a liquid-full vessel", "°C", v.Density.To.Celsius(), v.Shut.Celsius(), v.Density.To.Celsius()}
	}
	cold, _ := LiquidDensity(v.Density, v.MolarMass, v.Shut)
	t := root(float64(v.Shut), float64(v.Density.To), func(k float64) float64 {
		u, _ := v.ullageFrom(cold, units.Temperature(k))
		return u
	})
	return units.Temperature(t), nil
}
