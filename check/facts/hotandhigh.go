package facts

import (
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// hotAndHigh holds a gasket against both limits at once: the highest pressure and the highest temperature of its kind never
// apply together (reference page on flat gaskets, restated). A rating that a document gives the seal itself speaks alone.
func (b *builder) hotAndHigh(j *resolve.Joint, s *resolve.Seal, out *Seal) {
	k := s.Kind
	if !flat(k) || !flanged(j) || s.Sheet.Rated.Set && s.Sheet.Evidence.Set {
		return
	}
	if out.Both = k.PressTimesT != nil; out.Both {
		out.MostBoth = b.keep(units.RoundDown(k.PressTimesT.Value * 100))
	}
	top, p, ok := b.hottest(j.Run), units.GaugePressure(0), true
	for _, x := range b.ofJoint(j) {
		ok, p = ok && x.known, max(p, x.p)
	}
	if !ok || top == nil {
		return
	}
	c := max(top.Celsius(), 0)
	if out.Both {
		out.HaveBoth = b.keep(units.RoundUp(float64(p) / 1e3 * c))
	}
	out.PShare = b.keep(units.RoundUp(float64(p) / 1e5 / k.HighestBar.Value * 1000))
	out.TShare = b.keep(units.RoundUp(c / k.HighestC.Value * 1000))
}

// ofJoint is what pushes on a joint of its run.
func (b *builder) ofJoint(j *resolve.Joint) []push {
	for n, x := range j.Run.Joints {
		if x == j {
			return b.atJoint(j.Run, n)
		}
	}
	return nil
}
