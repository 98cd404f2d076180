package measure

import (
	"math"

	"lineworthy/check/units"
)

// What a metal shell is taken for where only its rating is known: no alloy of vessels is allowed more stress at its rating
// (practice; the less wall it needs, the sooner it buckles), and the elastic modulus is that of steel at 20 °C (handbook
// value, recalled). Softer metals are allowed less stress in proportion and come out thicker.
const (
	shellStressPa  = 340e6
	shellModulusPa = 200e9
	shellPoisson   = 0.3
	againstBuckle  = 3 // the margin on collapse of ASME Section VIII Div. 1 UG-28 (recalled)
)

// Collapse is how far below the air a round metal shell stands for certain that is rated for so much inside: wall over
// radius is rating over stress, and a long tube buckles at E/(4(1-v^2)) (t/r)^3 (Bresse; recalled), with a margin of 3. It
// says nothing of flat walls, nor of plastics.
func Collapse(rated units.GaugePressure) units.PressureDifference {
	wall := max(float64(rated), 0) / shellStressPa
	return units.PressureDifference(shellModulusPa / (4 * (1 - shellPoisson*shellPoisson)) * math.Pow(wall, 3) / againstBuckle)
}
