package measure

import "lineworthy/check/units"

// normalPa and normalK are where gas volumes are counted, 1 atm and 15 °C (ISO 13443, recalled).
const (
	normalPa = 101325
	normalK  = 288.15
)

// NormalVolume is what a mass of nitrogen measures at 1 atm and 15 °C.
func NormalVolume(m units.Mass) units.Volume {
	return units.Volume(float64(m) / (nitrogenDensity(normalK, normalPa) * nitrogenMolarMass))
}

// NitrogenMass is the mass of nitrogen in a volume. Errors as NitrogenZ.
func NitrogenMass(p units.AbsolutePressure, t units.Temperature, v units.Volume) (units.Mass, error) {
	rho, err := NitrogenDensity(p, t)
	return units.Mass(float64(rho) * float64(v)), err
}

// Cylinder is a gas cylinder and the pressure over the pad at which it counts as empty.
type Cylinder struct {
	Volume  units.Volume
	Full    units.AbsolutePressure
	Reserve units.PressureDifference
}

// PadMass is the nitrogen that displaces a volume of liquid at the pad pressure, without top-up of the ullage and purges
// (computed). Errors as NitrogenZ.
func PadMass(pad units.AbsolutePressure, t units.Temperature, displaced units.Volume) (units.Mass, error) {
	return NitrogenMass(pad, t, displaced)
}

// CylinderCount is how many cylinders the mass takes, not rounded: count at settled temperature (computed). A reserve at
// or above the full pressure is an OutsideError.
func CylinderCount(m units.Mass, c Cylinder, pad units.AbsolutePressure, t units.Temperature) (float64, error) {
	empty := pad.Plus(c.Reserve)
	if empty >= c.Full {
		return 0, &OutsideError{"the use of a cylinder", "bar(a)", float64(empty) / 1e5, 0, float64(c.Full) / 1e5}
	}
	full, err := NitrogenMass(c.Full, t, c.Volume)
	if err != nil {
		return 0, err
	}
	left, err := NitrogenMass(empty, t, c.Volume)
	if err != nil {
		return 0, err
	}
	return float64(m / (full - left)), nil
}
