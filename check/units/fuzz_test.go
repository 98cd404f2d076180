package units

import (
	"math"
	"testing"
)

// FuzzParse feeds every parser the same text: none may panic, and what is accepted is finite.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{"16 bar(g)", "16 bar", "1,5 psig", "-40 °F", "1 1/2 in", "1-1/2\"", "DN 25", "NPS 1/2", "-16", "85 %",
		"Cv 0.06", "2026-11-25", "2024-03", "5 years", "1e999 m", "0x10 m", "NaN", "\xff\xfe", "½\"", "1/0 in", "5 MOHM", "''", "°"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, s string) {
		for name, parse := range parsers {
			value, err := parse(s)
			if err != nil && err.Error() == "" {
				t.Errorf("%s(%q): empty error", name, s)
			}
			if err == nil && (math.IsNaN(value) || math.IsInf(value, 0)) {
				t.Errorf("%s(%q) = %v", name, s, value)
			}
		}
	})
}

var parsers = map[string]func(string) (float64, error){
	"pressure":   func(s string) (float64, error) { p, err := ParsePressure(s); return p.Pascals, err },
	"gauge":      func(s string) (float64, error) { v, _, err := ParseGauge(s); return float64(v), err },
	"absolute":   func(s string) (float64, error) { v, _, err := ParseAbsolute(s); return float64(v), err },
	"difference": func(s string) (float64, error) { v, _, err := ParsePressureDifference(s); return float64(v), err },
	"degrees":    func(s string) (float64, error) { v, _, err := ParseTemperature(s); return float64(v), err },
	"step":       func(s string) (float64, error) { return si(ParseTemperatureDifference(s)) },
	"length":     func(s string) (float64, error) { return si(ParseLength(s)) },
	"elevation":  func(s string) (float64, error) { return si(ParseElevation(s)) },
	"area":       func(s string) (float64, error) { return si(ParseArea(s)) },
	"volume":     func(s string) (float64, error) { return si(ParseVolume(s)) },
	"flow":       func(s string) (float64, error) { return si(ParseVolumeFlow(s)) },
	"mass":       func(s string) (float64, error) { return si(ParseMass(s)) },
	"time":       func(s string) (float64, error) { return si(ParseDuration(s)) },
	"velocity":   func(s string) (float64, error) { return si(ParseVelocity(s)) },
	"viscosity":  func(s string) (float64, error) { return si(ParseViscosity(s)) },
	"density":    func(s string) (float64, error) { return si(ParseDensity(s)) },
	"resistance": func(s string) (float64, error) { return si(ParseResistance(s)) },
	"conduct":    func(s string) (float64, error) { return si(ParseConductivity(s)) },
	"force":      func(s string) (float64, error) { return si(ParseForce(s)) },
	"energy":     func(s string) (float64, error) { return si(ParseEnergy(s)) },
	"power":      func(s string) (float64, error) { return si(ParsePower(s)) },
	"fraction":   func(s string) (float64, error) { return si(ParseFraction(s)) },
	"kv":         func(s string) (float64, error) { return si(ParseFlowCoefficient(s)) },
	"date":       func(s string) (float64, error) { d, err := ParseDate(s); return float64(d.Days), err },
	"months":     func(s string) (float64, error) { m, err := ParseMonths(s); return float64(m), err },
	"size":       func(s string) (float64, error) { v, err := ParseSize(s); return float64(v.Bore), err },
	"system":     func(s string) (float64, error) { _, err := ParseSystem(s); return 0, err },
}
