package units

import (
	"math"
	"strconv"
)

// Temperature is in K, 0..3000 when read.
type Temperature float64

// The Fahrenheit zeros and ratio are exact (NIST SP 811, 2008, App. B.8; recalled).
var temperatures = table{
	quantity: "a temperature", example: "20 °C", lowest: 0, highest: 3000,
	scales: []scale{
		{"°C", 1, 273.15, []string{"C", "degC", "deg. C", "celsius"}},
		{"°F", 1 / 1.8, 459.67, []string{"F", "degF", "fahrenheit"}},
		{"K", 1, 0, []string{"kelvin"}},
	},
	hints: map[string]string{
		"°":   "does not say which degree: write °C or °F",
		"deg": "does not say which degree: write °C or °F",
	},
}

// Celsius is the temperature of a number of °C.
func Celsius(degrees float64) Temperature { return Temperature(degrees + 273.15) }

// Celsius is the number of °C.
func (t Temperature) Celsius() float64 { return float64(t) - 273.15 }

// ParseTemperature reads "20 °C", "68 °F" or "293.15 K". Below 0 K and above 3000 K are errors.
func ParseTemperature(s string) (Temperature, Unit, error) {
	k, found, err := temperatures.read(s)
	if err != nil {
		return 0, "", err
	}
	return Temperature(k), found.name, nil
}

// Plus warms by a difference.
func (t Temperature) Plus(d TemperatureDifference) Temperature { return t + Temperature(d) }

// Minus is the difference from another temperature.
func (t Temperature) Minus(other Temperature) TemperatureDifference {
	return TemperatureDifference(t - other)
}

// In is the number in °C, °F or K.
func (t Temperature) In(unit Unit) (float64, error) { return temperatures.in(float64(t), unit) }

// Format prints to a tenth of a degree; an unknown unit prints as °C.
func (t Temperature) Format(unit Unit) string {
	s, err := temperatures.find(string(unit))
	if err != nil {
		s = temperatures.scales[0]
	}
	tenths := math.Round(s.number(float64(t))*10) / 10
	if tenths == 0 {
		tenths = 0 // no minus sign on zero
	}
	return dropZeros(strconv.FormatFloat(tenths, 'f', 1, 64), 0) + " " + string(s.name)
}

// String prints in °C.
func (t Temperature) String() string { return t.Format("°C") }
