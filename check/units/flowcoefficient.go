package units

import (
	"fmt"
	"regexp"
)

// FlowCoefficient is a valve's Kv: m3/h of water at a pressure difference of 1 bar.
type FlowCoefficient float64

// kvPerCv is Kv = 0.86498 Cv: Cv counts US gal/min at 1 psi (IEC 60534-1, recalled, has 0.865).
const kvPerCv = 0.86498

var flowCoefficients = table{
	quantity: "a flow coefficient", example: "Cv 0.06 or Kv 0.05", lowest: 0, highest: 1e6,
	scales: []scale{
		{"Kv", 1, 0, []string{"Kvs"}},
		{"Cv", kvPerCv, 0, nil},
	},
}

var coefficientFirst = regexp.MustCompile(`^([A-Za-z]+) *[=:]? *(.*)$`)

// FromCv is the coefficient of a Cv (US gal/min at 1 psi).
func FromCv(cv float64) FlowCoefficient { return FlowCoefficient(cv * kvPerCv) }

// FromKv is the coefficient of a Kv (m3/h at 1 bar).
func FromKv(kv float64) FlowCoefficient { return FlowCoefficient(kv) }

// Kv is m3/h at 1 bar.
func (c FlowCoefficient) Kv() float64 { return float64(c) }

// Cv is US gal/min at 1 psi.
func (c FlowCoefficient) Cv() float64 { return float64(c) / kvPerCv }

// ParseFlowCoefficient reads "Cv 0.06", "Kv = 0.05" or "0.06 Cv". A bare number is
// refused, for it can be read either way.
func ParseFlowCoefficient(s string) (FlowCoefficient, error) {
	text := tidy(s)
	if m := coefficientFirst.FindStringSubmatch(text); m != nil {
		text = m[2] + " " + m[1]
	}
	number, spelling, err := splitNumber(text, flowCoefficients.example)
	if err != nil {
		return 0, err
	}
	if spelling == "" {
		return 0, fmt.Errorf("%s does not say Cv or Kv: write Cv %[2]s (= Kv %s) or Kv %[2]s (= Cv %[4]s)",
			quote(s), digits(number, 15, 1), digits(FromCv(number).Kv(), 4, 1), digits(FromKv(number).Cv(), 4, 1))
	}
	si, _, err := flowCoefficients.convert(s, number, spelling)
	return keep[FlowCoefficient](si, err)
}

// Format prints with the coefficient's name first, as in "Cv 0.06"; an unknown name prints as Kv.
func (c FlowCoefficient) Format(unit Unit) string {
	s, err := flowCoefficients.find(string(unit))
	if err != nil {
		s = flowCoefficients.scales[0]
	}
	return string(s.name) + " " + digits(s.number(float64(c)), 4, 1)
}

// String prints as Kv.
func (c FlowCoefficient) String() string { return c.Format("Kv") }
