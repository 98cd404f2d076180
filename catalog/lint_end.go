package catalog

import "fmt"

func (l *linter) layer(s spot, y Layer) {
	l.refer(s, Materials, y.Materials...)
	if len(y.Materials) == 0 {
		l.fault(s, "the layer names no material; leave it out if it is unknown")
	}
}

func (l *linter) span(s spot, t Span) {
	if t.LowestC != nil && t.HighestC != nil && *t.LowestC > *t.HighestC {
		l.fault(s, "lowest_c lies above highest_c")
	}
}

func (l *linter) derating(s spot, d Derating) {
	l.points(s, d.Points, 1)
	for id, points := range d.ByMaterial {
		l.refer(s, Materials, id)
		l.points(s, points, 1)
	}
}

func (l *linter) endRating(s spot, r EndRating) {
	l.refer(s, Materials, append(r.Material, r.NotFor...)...)
	l.points(s, r.Points, 7000)
	if len(r.Points) == 0 {
		l.fault(s, "the rating has no points")
	}
}

// points checks a rating table: hotter row by row, never stronger, within 0 and the highest value.
func (l *linter) points(s spot, points []Point, highest float64) {
	for i, p := range points {
		if p.C < -273.15 || p.C > 2000 || p.Value < 0 || p.Value > highest {
			l.fault(s, "point %v at %v °C is out of bounds; want values 0 to %v", p.Value, p.C, highest)
		}
		if i > 0 && p.C <= points[i-1].C {
			l.fault(s, "point at %v °C follows %v °C; want temperatures ascending", p.C, points[i-1].C)
		}
		if i > 0 && p.Value > points[i-1].Value {
			l.fault(s, "value rises from %v to %v at %v °C; a rating never rises with temperature", points[i-1].Value, p.Value, p.C)
		}
	}
}

func (l *linter) sealNeed(s spot, n SealNeed) {
	l.refer(s, Seals, n.Kinds...)
	if n.Required && len(n.Kinds) == 0 {
		l.fault(s, "the seal is required, but no kind of seal fits it")
	}
}

func (l *linter) seal(s spot, v Seal) { l.refer(s, Materials, v.Materials...) }

func (l *linter) outletNumber(s spot, o OutletNumber) { l.refer(s, Fluids, o.Fluids...) }

// mate checks that a pair leads somewhere and is written once, in the file of either family. A site may
// write a pair again.
func (l *linter) mate(s spot, m Mate) {
	l.refer(s, Connections, m.With)
	if s.file.site {
		return
	}
	pair := pairKey(s.file.id, m.With)
	here := fmt.Sprintf("%s:%d", s.file.path, s.node.Line)
	if first, again := l.mates[pair]; again {
		l.fault(s, "the pair of %s and %s is written twice; the first is at %s", s.file.id, m.With, first)
		return
	}
	l.mates[pair] = here
}

func pairKey(a, b string) string { return min(a, b) + " " + max(a, b) }

// selfMates asks every connection what becomes of two of its own halves.
func (l *linter) selfMates() {
	for _, id := range l.c.IDs(Connections) {
		if _, ok := l.mates[pairKey(id, id)]; !ok && l.c.builtIn(entry{Connections, id}) != nil {
			l.faults = append(l.faults, Fault{entry{Connections, id}.path(), 0, "no mating row with itself"})
		}
	}
}
