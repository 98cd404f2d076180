package facts

import (
	"lineworthy/check/resolve"
)

// Label is two labels that read alike: at points of two vessels that are not known to be for the same fluid, or the
// identities of two hoses of runs with different fluids that fit in each other's place.
type Label struct {
	ID       string `json:"id"`
	A        string `json:"a"`
	B        string `json:"b"`
	LabelA   string `json:"label_a"`
	LabelB   string `json:"label_b"`
	Likeness string `json:"likeness" words:"same,look-alike-character,transposed,last-digit,one-character"`
	Coupling string `json:"coupling,omitzero" words:"same,different" ask:"standard, size and gender of both points"`
	Keyed    bool   `json:"keyed"` // a key of its own keeps other fluids out of one of the two
}

// tag is one label with what it is on.
type tag struct {
	id, text string
	end      *resolve.End
	vessel   *resolve.Vessel
	fluids   map[string]bool // catalog ids; empty when not known
	part     *resolve.Part   // of a hose
}

func (b *builder) labels() {
	b.f.Labels = []Label{}
	all := append(b.pointTags(), b.hoseTags()...)
	for i, x := range all {
		for _, y := range all[:i] {
			if l, ok := alike(y, x); ok {
				b.f.Labels = append(b.f.Labels, l)
			}
		}
	}
}

// alike compares two labels. Names of parts are not labels, and the two ends of one vessel or one fluid do no harm.
func alike(x, y tag) (Label, bool) {
	together := x.part == nil && x.vessel == y.vessel || x.part != nil && y.part != nil && x.part.Run == y.part.Run
	if (x.part == nil) != (y.part == nil) || together || shares(x.fluids, y.fluids) {
		return Label{}, false
	}
	l := Label{ID: x.id + " and " + y.id, A: x.id, B: y.id, LabelA: x.text, LabelB: y.text, Likeness: likeness(x.text, y.text)}
	if x.part != nil {
		swap := swappable(x.part, y.part)
		serial := l.Likeness == "last-digit" || l.Likeness == "one-character" // identities are numbered in order
		l.Coupling = "same"
		return l, l.Likeness != "" && !serial && swap
	}
	l.Coupling, l.Keyed = coupling(x.end, y.end), keyed(x.end) || keyed(y.end)
	return l, l.Likeness != ""
}

func keyed(e *resolve.End) bool { return e.Sheet.Keyed.Set && e.Sheet.Keyed.V != "none" }

func shares(x, y map[string]bool) bool {
	for id := range x {
		if y[id] {
			return true
		}
	}
	return false
}

// swappable says whether either hose goes where the other belongs.
func swappable(x, y *resolve.Part) bool {
	for _, e := range [][2]*resolve.End{{x.Inlet, y.Inlet}, {x.Outlet, y.Outlet}} {
		if e[0].Sheet == nil || e[1].Sheet == nil || coupling(e[0], e[1]) != "same" {
			return false
		}
	}
	return true
}

// pointTags are the marked points in the order of the sheet.
func (b *builder) pointTags() (out []tag) {
	for _, v := range b.l.Vessels {
		for _, n := range v.Sheet.Points {
			if m := n.V.Marked; m.Set && m.V != "none" {
				out = append(out, tag{id: v.Key + "/" + n.Key, text: m.V, end: v.Points[n.Key], vessel: v, fluids: b.pointFluids(v, v.Points[n.Key])})
			}
		}
	}
	return out
}

// pointFluids are the fluids that the runs at this point carry, else those of the vessel.
func (b *builder) pointFluids(v *resolve.Vessel, e *resolve.End) map[string]bool {
	at, in := map[string]bool{}, map[string]bool{}
	for _, r := range b.l.Runs {
		for _, f := range r.Fluids {
			if r.SourceEnd == e || r.TargetEnd == e {
				at[f.Cat.ID] = true
			}
			if r.Source == v || r.Target == v {
				in[f.Cat.ID] = true
			}
		}
	}
	if len(at) > 0 {
		return at
	}
	if v.Contents != nil {
		in[v.Contents.Cat.ID] = true
	}
	return in
}

// hoseTags are the identities the line is approved with, else those read.
func (b *builder) hoseTags() (out []tag) {
	for _, r := range b.l.Runs {
		fluids := map[string]bool{}
		for _, f := range r.Fluids {
			fluids[f.Cat.ID] = true
		}
		for _, p := range r.Parts {
			text := p.Sheet.Assigned.V
			if text == "" {
				text = p.Sheet.Tag.V
			}
			if text != "" {
				out = append(out, tag{id: p.ID, text: text, fluids: fluids, part: p})
			}
		}
	}
	return out
}
