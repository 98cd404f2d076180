package facts

import "lineworthy/check/resolve"

// lowSide says whether a regulator of its run stands before the hose, and where what it lets through is let off.
func (b *builder) lowSide(p *resolve.Part, h *Hose) {
	for i, q := range p.Run.Parts[:p.Index] {
		if q.Sheet.Kind.V != "regulator" {
			continue
		}
		h.LowSide, h.LowReliefKPa = true, Int{}
		if d := b.device(p.Run, i, p.Index); !d.none() {
			if set, _, _, _ := d.sizes(); set.Set {
				h.LowReliefKPa = b.kpaUp(set.V.Gauge(b.l.Ambient))
			}
		}
	}
}
