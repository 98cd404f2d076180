package units

import (
	"fmt"
	"strings"
)

// Exact by definition: the inch, the avoirdupois pound and the standard acceleration
// (NIST SP 811, 2008, App. B.8; recalled).
const (
	inchM        = 0.0254
	poundKg      = 0.45359237
	gravityMs2   = 9.80665
	psiPa        = poundKg * gravityMs2 / (inchM * inchM)
	kgfPerCm2Pa  = gravityMs2 * 1e4
	waterKgm3    = 1000.0  // conventional water column
	mercuryKgm3  = 13595.1 // conventional mercury column
	atmospherePa = 101325.0
)

// pressureUnit is one size of unit; the basis decides how it is printed.
type pressureUnit struct {
	gauge, absolute Unit
	factor          float64
	spellings       []string // without basis; the first is the differential's name
}

var pressureUnits = []pressureUnit{
	{"bar(g)", "bar(a)", 1e5, []string{"bar"}},
	{"psig", "psia", psiPa, []string{"psi", "lbf/in2", "lb/in2"}},
	{"kPa(g)", "kPa(a)", 1e3, []string{"kPa"}},
	{"MPa(g)", "MPa(a)", 1e6, []string{"MPa", "N/mm2"}},
	{"kgf/cm2(g)", "kgf/cm2(a)", kgfPerCm2Pa, []string{"kgf/cm2", "kg/cm2", "kp/cm2"}},
	{"mbar(g)", "mbar(a)", 1e2, []string{"mbar", "hPa"}},
	{"Pa(g)", "Pa(a)", 1, []string{"Pa"}},
	{"ksi(g)", "ksi(a)", 1000 * psiPa, []string{"ksi"}},
	{"atm(g)", "atm(a)", atmospherePa, []string{"atm"}},
	{"inH2O(g)", "inH2O(a)", inchM * waterKgm3 * gravityMs2, []string{"inH2O"}},
	{"mmH2O(g)", "mmH2O(a)", 0.001 * waterKgm3 * gravityMs2, []string{"mmH2O"}},
	{"inHg(g)", "inHg(a)", inchM * mercuryKgm3 * gravityMs2, []string{"inHg"}},
	{"mmHg(g)", "mmHg(a)", 0.001 * mercuryKgm3 * gravityMs2, []string{"mmHg"}},
}

// basisMarks are the endings people write, the longest first.
var basisMarks = []struct {
	ending string
	basis  Basis
}{
	{"(absolute)", AbsoluteBasis}, {"absolute", AbsoluteBasis}, {"(abs)", AbsoluteBasis}, {"abs", AbsoluteBasis},
	{"(gauge)", GaugeBasis}, {"(gage)", GaugeBasis}, {"gauge", GaugeBasis}, {"gage", GaugeBasis},
	{"(a)", AbsoluteBasis}, {"(g)", GaugeBasis}, {"a", AbsoluteBasis}, {"g", GaugeBasis},
}

func (u pressureUnit) name(basis Basis) Unit {
	switch basis {
	case GaugeBasis:
		return u.gauge
	case AbsoluteBasis:
		return u.absolute
	}
	return Unit(u.spellings[0])
}

// findPressureUnit reads a spelling; the zero Basis means it states none.
func findPressureUnit(spelling string) (pressureUnit, Basis, error) {
	typed := plain(spelling)
	if typed == "" {
		return pressureUnit{}, 0, fmt.Errorf("no unit: write a pressure like 6 bar(g) or 7 bar(a)")
	}
	if u, ok := bareUnit(typed); ok {
		return u, 0, nil
	}
	for _, mark := range basisMarks {
		stem, cut := strings.CutSuffix(typed, mark.ending)
		if u, ok := bareUnit(strings.TrimRight(stem, "-_,")); cut && ok {
			return u, mark.basis, nil
		}
	}
	return pressureUnit{}, 0, unknownPressureUnit(spelling)
}

func bareUnit(typed string) (pressureUnit, bool) {
	u, ok := barePressureUnits[typed]
	return u, ok
}

// barePressureUnits finds a unit by its plain spelling without a basis.
var barePressureUnits = func() map[string]pressureUnit {
	found := make(map[string]pressureUnit)
	for _, u := range pressureUnits {
		for _, known := range u.spellings {
			found[plain(known)] = u
		}
	}
	return found
}()

func unknownPressureUnit(spelling string) error {
	switch typed := plain(spelling); {
	case typed == "kg" || typed == "kgs" || typed == "kilo":
		return fmt.Errorf("unit %s is a mass: on pressure gauges it means kgf/cm2, so write kgf/cm2(g)", quote(spelling))
	case strings.Contains(typed, "vac"):
		return fmt.Errorf("unit %s is a vacuum: write it below zero in gauge, like -0.5 bar(g), or in absolute", quote(spelling))
	}
	var printed, known []string
	for _, u := range pressureUnits {
		printed = append(printed, string(u.gauge), string(u.absolute))
		known = append(known, string(u.gauge), string(u.absolute), u.spellings[0]+"g", u.spellings[0]+"a")
	}
	return fmt.Errorf("unknown pressure unit %s%s (known: %s)", quote(spelling), didYouMean(spelling, known), strings.Join(printed, ", "))
}

// printPressure prints with the mark of the basis whatever unit is asked for, so the
// mark can never be lost; an unknown unit prints as bar.
func printPressure(pa float64, basis Basis, unit Unit) string {
	u, _, err := findPressureUnit(string(unit))
	if err != nil {
		u = pressureUnits[0]
	}
	if pa > -1e-6 && pa < 1e-6 { // residue of a subtraction
		pa = 0
	}
	return digits(pa/u.factor, 4, 2) + " " + string(u.name(basis))
}

// pressureIn converts Pa to the number of a unit whose basis, if stated, must be the given one.
func pressureIn(pa float64, basis Basis, unit Unit) (float64, error) {
	u, stated, err := findPressureUnit(string(unit))
	if err != nil {
		return 0, err
	}
	if stated != 0 && stated != basis {
		return 0, fmt.Errorf("unit %s is not %s: convert with an ambient pressure first", quote(string(unit)), basis)
	}
	return pa / u.factor, nil
}
