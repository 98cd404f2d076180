package facts

import "lineworthy/check/resolve"

// duty is the highest pressure at which a fluid is used in ordinary operation: behind the regulators, or from one end of
// a run without any to the other. A cylinder's own pressure in front of its regulator is not use.
func (b *builder) duty(f *resolve.Fluid) Int {
	var ps []push
	for _, r := range b.l.Runs {
		if !carries(r, f) {
			continue
		}
		pass := b.passage(r)
		ps = append(ps, pass.end...)
		for _, in := range pass.in {
			for _, p := range in {
				if p.from != "" {
					ps = append(ps, p)
				}
			}
		}
	}
	top, found := push{}, false
	for _, p := range ps {
		if p.name != "duty" {
			continue
		}
		if !p.known {
			return Int{}
		}
		top, found = push{p: max(top.p, p.p)}, true
	}
	if !found {
		return Int{}
	}
	return b.kpaUp(top.p)
}

func carries(r *resolve.Run, f *resolve.Fluid) bool {
	for _, x := range r.Fluids {
		if x == f {
			return true
		}
	}
	return false
}
