package units

import (
	"errors"
	"fmt"
)

// System names the units a report prints in. The zero System prints bar(g), °C and mm.
type System struct {
	Pressure    Unit // of either basis; the other basis prints in the same size
	Temperature Unit
	Length      Unit
}

var systems = []struct {
	name   string
	system System
}{
	{"SI", System{"bar(g)", "°C", "mm"}},
	{"US", System{"psig", "°F", "in"}},
	{"kgf/cm2", System{"kgf/cm2(g)", "°C", "mm"}},
}

// DefaultSystem is bar(g), °C and mm.
func DefaultSystem() System { return systems[0].system }

// ParseSystem reads the name of a table of units: SI, US or kgf/cm2.
func ParseSystem(s string) (System, error) {
	var names []string
	for _, known := range systems {
		if plain(known.name) == plain(tidy(s)) {
			return known.system, nil
		}
		names = append(names, known.name)
	}
	return System{}, fmt.Errorf("unknown table of units %s%s: write SI, US or kgf/cm2", quote(s), didYouMean(s, names))
}

// Check reports every unit name of the system that is not known.
func (s System) Check() error {
	var faults []error
	if _, _, err := findPressureUnit(string(s.Pressure)); s.Pressure != "" && err != nil {
		faults = append(faults, err)
	}
	for _, part := range []struct {
		unit Unit
		from *table
	}{{s.Temperature, &temperatures}, {s.Length, &lengths}} {
		if _, err := part.from.find(string(part.unit)); part.unit != "" && err != nil {
			faults = append(faults, err)
		}
	}
	return errors.Join(faults...)
}

// Gauge prints a gauge pressure, always marked gauge: "6.0 bar(g)", "145 psig".
func (s System) Gauge(p GaugePressure) string { return p.Format(s.Pressure) }

// Absolute prints an absolute pressure, always marked absolute.
func (s System) Absolute(p AbsolutePressure) string { return p.Format(s.Pressure) }

// Difference prints a pressure difference, without a mark.
func (s System) Difference(p PressureDifference) string { return p.Format(s.Pressure) }

// Degrees prints a temperature.
func (s System) Degrees(t Temperature) string { return t.Format(s.Temperature) }

// Step prints a temperature difference: in °F where temperatures are, else in K.
func (s System) Step(d TemperatureDifference) string { return d.Format(s.Temperature) }

// Distance prints a length.
func (s System) Distance(l Length) string { return l.Format(s.Length) }
