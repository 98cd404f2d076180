package units

import (
	"fmt"
	"math"
)

// Basis says what a pressure is measured from.
type Basis int

// The two bases a line sheet can state. The zero Basis is unstated and never leaves this package.
const (
	GaugeBasis    Basis = iota + 1 // above ambient
	AbsoluteBasis                  // above vacuum
)

// String is the basis in words.
func (b Basis) String() string {
	switch b {
	case GaugeBasis:
		return "gauge"
	case AbsoluteBasis:
		return "absolute"
	}
	return "unstated"
}

// StandardAtmosphere is 101 325 Pa, the sea-level pressure of ISO 2533:1975 (recalled).
const StandardAtmosphere AbsolutePressure = 101325

const (
	highestPressurePa = 1e10
	// Deeper than the densest air on land, so below any vacuum a gauge can show.
	lowestGaugePa = -1.1e5
)

// Pressure is a pressure as typed: Pascals above its Basis, and the Unit it was typed in.
type Pressure struct {
	Pascals float64
	Basis   Basis
	Unit    Unit   // printed name, such as "bar(g)"
	Typed   string // the text as typed
}

// ParsePressure reads a gauge or absolute pressure, such as "6 bar(g)" or "29 psia".
// A unit that does not say which is refused with both readings shown.
func ParsePressure(s string) (Pressure, error) {
	number, spelling, err := splitNumber(s, "6 bar(g) or 7 bar(a)")
	if err != nil {
		return Pressure{}, err
	}
	found, basis, err := findPressureUnit(spelling)
	if err != nil {
		return Pressure{}, fmt.Errorf("%s: %w", quote(s), err)
	}
	if basis == 0 {
		return Pressure{}, refuseBare(s, number, found)
	}
	p := Pressure{Pascals: number * found.factor, Basis: basis, Unit: found.name(basis), Typed: tidy(s)}
	return p, p.plausible(s)
}

func (p Pressure) plausible(s string) error {
	switch {
	case math.Abs(p.Pascals) > highestPressurePa:
		return fmt.Errorf("%s is beyond any plausible pressure (1e10 Pa)", quote(s))
	case p.Basis == AbsoluteBasis && p.Pascals < 0:
		return fmt.Errorf("%s is below zero, which an absolute pressure cannot be", quote(s))
	case p.Basis == GaugeBasis && p.Pascals < lowestGaugePa:
		return fmt.Errorf("%s is deeper than a full vacuum (about -1.01 bar(g))", quote(s))
	}
	return nil
}

// refuseBare shows both readings of a pressure that says neither gauge nor absolute.
func refuseBare(s string, number float64, u pressureUnit) error {
	gauge, absolute := u.name(GaugeBasis), u.name(AbsoluteBasis)
	atmosphere := float64(StandardAtmosphere) / u.factor
	typed := digits(number, 15, 1)
	message := fmt.Sprintf("%s does not say gauge or absolute: write %s %s (= %s %s at sea level)",
		quote(s), typed, gauge, digits(number+atmosphere, 5, 1), absolute)
	if number < 0 {
		return fmt.Errorf("%s; it cannot be absolute, being below zero", message)
	}
	return fmt.Errorf("%s or %s %s (= %s %s)", message, typed, absolute, digits(number-atmosphere, 5, 1), gauge)
}

// Gauge is the pressure above the given ambient.
func (p Pressure) Gauge(ambient AbsolutePressure) GaugePressure {
	if p.Basis == AbsoluteBasis {
		return AbsolutePressure(p.Pascals).Gauge(ambient)
	}
	return GaugePressure(p.Pascals)
}

// Absolute is the pressure above vacuum in the given ambient.
func (p Pressure) Absolute(ambient AbsolutePressure) AbsolutePressure {
	return p.Gauge(ambient).Absolute(ambient)
}

// String prints the pressure in the unit it was typed in, with its basis.
func (p Pressure) String() string { return printPressure(p.Pascals, p.Basis, p.Unit) }
