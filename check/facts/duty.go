package facts

import (
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// duty is the highest pressure at which a fluid is used in ordinary operation: behind the regulators, or from one end of
// a run without any to the other. A cylinder's own pressure in front of its regulator is not use.
func (b *builder) duty(f *resolve.Fluid) Int {
	var top units.GaugePressure
	found := false
	for _, r := range b.l.Runs {
		if !carries(r, f) {
			continue
		}
		pass := b.passage(r)
		for i := range len(pass.in) + 1 {
			at, end := pass.end, i == len(pass.in)
			if !end {
				at = pass.in[i]
			}
			for j := range at {
				if p := &at[j]; p.name == "duty" && (end || p.from != "") {
					if !p.known {
						return Int{}
					}
					top, found = max(top, p.p), true
				}
			}
		}
	}
	if !found {
		return Int{}
	}
	return b.kpaUp(top)
}

func carries(r *resolve.Run, f *resolve.Fluid) bool {
	for _, x := range r.Fluids {
		if x == f {
			return true
		}
	}
	return false
}
