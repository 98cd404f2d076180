package decide

import "lineworthy/check/facts"

// ask is one rule to be put to a line.
type ask struct {
	rule     int      // place in the index
	elements []int    // of a rule that judges alone: those it may find something on; nil for all
	keys     []string // of these elements in the memory, if there is one
}

// asks are the rules that may find something on a line.
func (e *Engine) asks(f *facts.Facts) []ask {
	var out []ask
	for i, g := range e.guards {
		switch {
		case e.site.has(i):
		case g == nil:
			out = append(out, ask{rule: i})
		case g.alone != nil && len(g.bodies) > 0:
			if places := g.elements(f); len(places) > 0 {
				out = append(out, ask{rule: i, elements: places})
			}
		case g.lets(f):
			out = append(out, ask{rule: i})
		}
	}
	return out
}

// view is what of the facts is shown to the rules that are asked.
type view struct {
	all    bool
	whole  []string    // collections shown as they are
	picked []selection // lists of which some elements are shown, with some of their facts
}

type selection struct {
	over   string
	path   []int
	places []int // in order
	fields mask
}

// viewOf is all that the asked rules read: elsewhere they would find nothing.
func (e *Engine) viewOf(asks []ask) *view {
	w := &view{}
	for _, a := range asks {
		g := e.guards[a.rule]
		switch {
		case g == nil || g.reads == nil:
			w.all = true
			return w
		case a.elements != nil:
			w.pick(g.alone, a.elements)
			if len(g.alone.line) > 0 {
				w.show("line")
			}
		default:
			for _, name := range g.reads {
				w.show(name)
			}
		}
	}
	return w
}

func (w *view) show(name string) {
	for _, x := range w.whole {
		if x == name {
			return
		}
	}
	w.whole = append(w.whole, name)
}

func (w *view) pick(a *alone, places []int) {
	for i := range w.picked {
		if s := &w.picked[i]; s.over == a.over {
			s.places, s.fields = union(s.places, places), s.fields|a.fields
			return
		}
	}
	w.picked = append(w.picked, selection{a.over, a.path, places, a.fields})
}

// union merges two ascending lists.
func union(a, b []int) []int {
	out := make([]int, 0, max(len(a), len(b)))
	for len(a) > 0 && len(b) > 0 {
		switch {
		case a[0] < b[0]:
			out, a = append(out, a[0]), a[1:]
		case a[0] > b[0]:
			out, b = append(out, b[0]), b[1:]
		default:
			out, a, b = append(out, a[0]), a[1:], b[1:]
		}
	}
	return append(append(out, a...), b...)
}
