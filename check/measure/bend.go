package measure

import (
	"math"

	"lineworthy/check/units"
)

// Lengths here are of live hose, without the rigid ends; radii to the centreline. All is plane geometry (computed).

// UBendRadius is the radius of a hose hung in a U between fittings a spacing apart.
func UBendRadius(spacing units.Length) units.Length { return spacing / 2 }

// UBendLength is the least length of the U: pi R and a straight piece behind each fitting.
func UBendLength(radius, straight units.Length) units.Length { return math.Pi*radius + 2*straight }

// QuarterBendLength is the least length of a bend of 90°.
func QuarterBendLength(radius, straight units.Length) units.Length {
	return math.Pi/2*radius + 2*straight
}

// Offset is a hose between two parallel fittings that do not face each other.
type Offset struct {
	Length units.Length // of hose
	Span   units.Length // along the fittings
	Angle  float64      // radians, of each arc; zero for the beam
}

// ArcOffset is the offset by two equal arcs of radius r, the bound that no hose reaches. A step beyond 2 r is an
// OutsideError.
func ArcOffset(r, step units.Length) (Offset, error) {
	if err := outside("an offset of two arcs", "m", float64(step), 0, 2*float64(r)); err != nil {
		return Offset{}, err
	}
	a := math.Acos(1 - float64(step)/(2*float64(r)))
	return Offset{units.Length(2 * float64(r) * a), units.Length(2 * float64(r) * math.Sin(a)), a}, nil
}

// BeamOffset is the offset of a hose held at both ends, bent no tighter than r at its fittings: span sqrt(6 r step).
func BeamOffset(r, step units.Length) Offset {
	span := math.Sqrt(6 * float64(r) * float64(step))
	return Offset{Length: units.Length(math.Hypot(span, float64(step))), Span: units.Length(span)}
}

// BeamRadius is the tightest radius of a hose held at both ends over a span with a step; infinite without a step.
func BeamRadius(span, step units.Length) units.Length {
	return units.Length(float64(span) * float64(span) / (6 * float64(step)))
}

// Slack is the length that a hose needs to spare when pressure changes its length by the given part.
func Slack(length units.Length, change float64) units.Length {
	return units.Length(math.Abs(change) * float64(length))
}
