package suggest

import (
	"fmt"
	"slices"
	"strings"
)

// bodies are other materials, ratings and temperature limits for a part that is not a hose.
func (s *search) bodies(sp *spot) (out []change) {
	p := sp.part
	path := fmt.Sprintf("runs.%s.parts[%d]", sp.run.Key, p.Index)
	now := ""
	if p.Body != nil {
		now = p.Body.ID
	}
	for _, m := range s.choose(s.metals(), sp.run, now, 4) {
		if !s.o.Stock.has(m, "") {
			continue
		}
		c := change{spot: sp.id, kind: "body", where: p.ID, parts: []string{p.ID}, cost: 3}
		var was, is []string
		if m != now {
			c.edits, c.uses = append(c.edits, put(path, "material", m, byPlate)), append(c.uses, "materials/"+m)
			was, is = append(was, "body "+now), append(is, "body "+m)
		}
		wetted, changed := s.wetted(sp)
		if changed {
			c.edits = append(c.edits, edit{path, "wetted", list(wetted...), byPlate})
			was, is = append(was, "wetted "+strings.Join(texts(sp), ", ")), append(is, "wetted "+strings.Join(wetted, ", "))
		}
		if need := s.need(p.ID, "body"); p.Sheet.Rated.Set && p.Sheet.Rated.V.Gauge(s.line.Ambient) < need {
			rated := fmt.Sprintf("%g bar(g)", roundUp(need))
			c.edits = append(c.edits, put(path, "rated", rated, byPlate))
			was, is = append(was, "rated "+p.Sheet.Rated.Text), append(is, "rated at least "+rated)
		}
		s.limits(sp, path, &c, &is)
		if len(is) == 0 {
			continue
		}
		c.edits = append(c.edits, drop(path, "evidence")...)
		c.before, c.after = strings.Join(was, ", "), strings.Join(is, ", ")
		c.needs = []string{"the plate or certificate of the new " + p.Sheet.Kind.V + " " + p.ID + ": " + c.after}
		out = append(out, c)
	}
	return out
}

const byPlate = "to be shown by plate or certificate"

func texts(sp *spot) (out []string) {
	for _, m := range sp.part.Wetted {
		out = append(out, m.ID)
	}
	return out
}

// wetted replaces each further wetted material that does not bear the fluids by one of its family that does.
func (s *search) wetted(sp *spot) (out []string, changed bool) {
	for _, m := range sp.part.Wetted {
		if s.bears(m, sp.run) <= 1 && s.fitsTemperature(m, sp.run) {
			out = append(out, m.ID)
			continue
		}
		better := s.choose(s.family(m.Family), sp.run, "", 1)
		if len(better) == 0 {
			better = s.choose([]string{"PTFE", "FFKM"}, sp.run, "", 1)
		}
		if len(better) > 0 {
			out, changed = append(out, better[0]), true
		} else {
			out = append(out, m.ID)
		}
	}
	slices.Sort(out)
	return slices.Compact(out), changed
}

func (s *search) family(family string) (out []string) {
	for _, id := range s.cat.IDs("materials") {
		if m, err := s.cat.Material(id); err == nil && m.Family == family {
			out = append(out, id)
		}
	}
	return out
}

// limits widens stated temperature limits that are too narrow.
func (s *search) limits(sp *spot, path string, c *change, is *[]string) {
	p, hot, cold := sp.part, s.hot(sp.run), s.cold(sp.run)
	if hot != nil && p.Sheet.Highest.Set && p.Sheet.Highest.V < *hot {
		c.edits = append(c.edits, put(path, "highest", outward(*hot, 1), byPlate))
		*is = append(*is, "good up to "+outward(*hot, 1))
	}
	if cold != nil && p.Sheet.Lowest.Set && p.Sheet.Lowest.V > *cold {
		c.edits = append(c.edits, put(path, "lowest", outward(*cold, -1), byPlate))
		*is = append(*is, "good down to "+outward(*cold, -1))
	}
}
