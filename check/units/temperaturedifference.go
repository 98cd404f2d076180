package units

// TemperatureDifference is in K: 10 °F of it is 5.5556 K, never -12.2 °C.
type TemperatureDifference float64

var temperatureDifferences = table{
	quantity: "a temperature difference", example: "5 K", lowest: -3000, highest: 3000,
	scales: []scale{
		{"K", 1, 0, []string{"°C", "C", "degC", "kelvin", "celsius"}},
		{"°F", 1 / 1.8, 0, []string{"F", "degF", "fahrenheit"}},
	},
	hints: temperatures.hints,
}

// ParseTemperatureDifference reads "5 K", "5 °C" or "10 °F" as a step, not a point.
func ParseTemperatureDifference(s string) (TemperatureDifference, error) {
	k, _, err := temperatureDifferences.read(s)
	return keep[TemperatureDifference](k, err)
}

// In is the number in K, °C or °F steps.
func (d TemperatureDifference) In(unit Unit) (float64, error) {
	return temperatureDifferences.in(float64(d), unit)
}

// Format prints in K or °F steps; an unknown unit prints as K.
func (d TemperatureDifference) Format(unit Unit) string {
	return temperatureDifferences.print(float64(d), unit)
}

// String prints in K.
func (d TemperatureDifference) String() string { return d.Format("K") }
