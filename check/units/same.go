package units

import (
	"math"
	"strconv"
	"strings"
)

const (
	// Inch and metric names of one hose bore differ by up to this much: 25 and 25.4 mm,
	// 6 and 6.35 mm (ISO 1307:2006; recalled).
	boreNamesShare = 0.06
	// A pipe's real bore strays from its DN by up to about this much (practice, no source).
	pipeBoreShare = 0.30
)

// Same says whether two sizes are the same, and whether their texts alone can settle it.
//
// DN and NPS of one pipe are the same. Bores typed in the same terms, or equal to a
// micrometre, are compared as numbers. A metric bore near an inch bore, and a pipe size near a
// bore (DN 50 and 2 in), stay unknown: they may or may not fit, and only the
// product's data can say. Anything further apart is known to differ.
func Same(a, b Size) (same, known bool) {
	aDN, bDN := a.pipe(), b.pipe()
	switch {
	case !a.named() || !b.named():
		return false, false
	case aDN != 0 && bDN != 0:
		return aDN == bDN, true
	case aDN != 0 || bDN != 0:
		return false, !within(a.Nominal(), b.Nominal(), pipeBoreShare)
	case math.Abs(float64(a.Bore-b.Bore)) < 1e-6:
		return true, true
	case a.metric() == b.metric():
		return false, true
	}
	return false, !within(a.Bore, b.Bore, boreNamesShare)
}

// Nominal is the bore, or for a DN or NPS the DN read as mm: good enough to sort sizes
// by, not to compute a flow or a fit with. It is 0 for the zero Size.
func (s Size) Nominal() Length {
	if dn := s.pipe(); dn != 0 {
		return Length(dn) / 1000
	}
	return s.Bore
}

// String is the canonical text.
func (s Size) String() string { return s.Text }

// pipe is the DN of a DN or NPS size, or 0.
func (s Size) pipe() int {
	if s.DN != 0 {
		return s.DN
	}
	dn, _ := DNOfNPS(s.NPS)
	return dn
}

func (s Size) named() bool  { return s.Nominal() > 0 }
func (s Size) metric() bool { return strings.HasSuffix(s.Text, "mm") }

func within(a, b Length, share float64) bool {
	return math.Abs(float64(a-b)) <= share*math.Max(float64(a), float64(b))
}

// Inches is the size in inches where it was typed so: as an NPS, a dash number or a bore in inches; else 0.
func (s Size) Inches() float64 {
	switch {
	case s.NPS != "":
		if inches, _, found, err := leadingFraction(s.NPS); found && err == nil {
			return inches
		}
		inches, _ := strconv.ParseFloat(s.NPS, 64)
		return inches
	case s.DN != 0 || s.metric():
		return 0
	}
	return math.Round(float64(s.Bore)/inchM*1e6) / 1e6
}
