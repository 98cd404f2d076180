package suggest

import "slices"

// own is the change that a way makes beside the work on the site.
func (s *search) own(t *trial) change { return t.changes[len(t.changes)-1] }

// combine puts the best ways of all spots together, tries the others in their place one at a time, and then takes back
// whatever the line does without.
func (s *search) combine(base *trial, all []*ways) []*trial {
	p := s.picked(all)
	best := s.try([][]change{s.set(p)})[0]
	found := []*trial{best}
	for range rounds {
		tried := s.swapped(p, all)
		next := sound(append([]*trial{best}, tried...), compare)
		if found = append(found, tried...); len(next) == 0 || next[0] == best {
			break
		}
		best = next[0]
		for _, c := range best.changes {
			if c.kind != "site" {
				p.change[c.spot] = c
			}
		}
	}
	found = append(found, s.pruned(best)...)
	found = sound(slices.DeleteFunc(found, func(t *trial) bool { return t.err != nil || !better(t, base) || fails(t) }), compare)
	if len(found) > 0 && usable(found[0].verdict.Word) {
		found = slices.DeleteFunc(found, func(t *trial) bool { return !usable(t.verdict.Word) })
	}
	return found
}

// picks is one change for each spot, in the order of the line.
type picks struct {
	order  []string
	change map[string]change
}

// picked is the best way for each spot that it does any good to.
func (s *search) picked(all []*ways) picks {
	p := picks{change: map[string]change{}}
	for _, w := range all {
		if len(w.best) > 0 && at(w.spot.id)(w.best[0], w.as) < 0 {
			p.order, p.change[w.spot.id] = append(p.order, w.spot.id), s.own(w.best[0])
		}
	}
	return p
}

// swapped are the sheets that differ from the picks in one spot.
func (s *search) swapped(p picks, all []*ways) []*trial {
	var sets [][]change
	for _, w := range all {
		for _, t := range w.best {
			swap := s.own(t)
			if now, in := p.change[w.spot.id]; in && now.after != swap.after {
				sets = append(sets, s.set(picks{p.order, with(p.change, swap)}))
			}
		}
	}
	return s.try(sets)
}

// fails says whether something forbids a part that was put in.
func fails(t *trial) bool {
	return slices.ContainsFunc(t.changes, func(c change) bool { return c.kind != "site" && count(t.faults, c.spot, "stop") > 0 })
}

func with(pick map[string]change, c change) map[string]change {
	out := map[string]change{c.spot: c}
	for k, v := range pick {
		if k != c.spot {
			out[k] = v
		}
	}
	return out
}

func (s *search) set(p picks) []change {
	out := slices.Clone(s.fixed)
	for _, id := range p.order {
		out = append(out, p.change[id])
	}
	return out
}

// pruned takes changes out again, one after the other, for as long as nothing more stands against the line.
func (s *search) pruned(best *trial) (out []*trial) {
	for best.err == nil {
		var sets [][]change
		for i := range best.changes {
			if best.changes[i].kind != "site" {
				sets = append(sets, slices.Delete(slices.Clone(best.changes), i, i+1))
			}
		}
		var next *trial
		for _, t := range s.try(sets) {
			if t.err == nil && !more(t, best) && (next == nil || compare(t, next) < 0) {
				next = t
			}
		}
		if next == nil {
			return out
		}
		out, best = append(out, next), next
	}
	return out
}

// more says whether more stands against a than against b.
func more(a, b *trial) bool {
	for _, severity := range []string{"stop", "unknown", "condition"} {
		if x, y := count(a.faults, "", severity), count(b.faults, "", severity); x != y {
			return x > y
		}
	}
	return false
}

// better says whether a line is nearer to use: by its verdict, or by fewer faults under the same one.
func better(a, b *trial) bool {
	if x, y := wordRank(a.verdict.Word), wordRank(b.verdict.Word); x != y {
		return x < y
	}
	for _, severity := range []string{"stop", "unknown", "condition"} {
		if x, y := count(a.faults, "", severity), count(b.faults, "", severity); x != y {
			return x < y
		}
	}
	return false
}
