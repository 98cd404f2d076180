package report

import (
	"slices"
	"strconv"
	"strings"
)

// marked is a mark and the names it is about: first the closest, then the wider ones.
type marked struct {
	mark
	about []string
}

type marking []marked

// marksOf numbers the findings and questions as the lists of the page do.
func marksOf(v *Verdict) marking {
	var all marking
	for i, e := range entryGroups(v) {
		for _, f := range e.items {
			all = append(all, marked{newMark(e.Severity, strconv.Itoa(i+1)), []string{f.Part, f.Subject}})
		}
	}
	for i, g := range gaps(v) {
		all = append(all, marked{newMark(open, question(i)), g.subjects})
	}
	return all
}

func entryGroups(v *Verdict) []group {
	var all []group
	for _, s := range severities {
		all = append(all, groups(v, s)...)
	}
	return all
}

// on are the marks that a name carries, each once, in their order.
func (all marking) on(name string, drawn []string) []mark {
	var out []mark
	for _, m := range all {
		if slices.Contains(m.named(drawn), name) && !slices.Contains(out, m.mark) {
			out = append(out, m.mark)
		}
	}
	return out
}

// named are the drawn names a mark is about. A finding on a part of a joint that also names its other side belongs to the
// part alone; a question may be about many things at once.
func (m marked) named(drawn []string) []string {
	var out []string
	for _, text := range m.about {
		for _, name := range drawn {
			if mentions(text, name) {
				out = add(out, name)
			}
		}
		if len(out) > 0 && m.Severity != open {
			break
		}
	}
	return out
}

// beside are the marks that no drawn part, end or run carries, as words.
func (all marking) beside(v *Verdict) []string {
	drawn := drawnNames(v)
	var out []mark
	for _, m := range all {
		if len(m.named(drawn)) == 0 && !slices.Contains(out, m.mark) {
			out = append(out, m.mark)
		}
	}
	return spoken(out)
}

// spoken are marks in words, e.g. "stop 1".
func spoken(marks []mark) []string {
	var out []string
	for _, m := range marks {
		word := m.Severity
		if word == open {
			word = "question"
		}
		out = append(out, word+" "+m.Text)
	}
	return out
}

// drawnNames are the parts, ends and runs that can carry a mark.
func drawnNames(v *Verdict) []string {
	names := drawnThings(v)
	for _, r := range v.Runs {
		names = add(names, r.Name)
	}
	return names
}

// drawnThings are the parts and ends.
func drawnThings(v *Verdict) []string {
	var names []string
	for _, r := range v.Runs {
		names = add(names, r.From, r.To)
		for _, p := range r.Parts {
			names = add(names, p.ID)
		}
	}
	return slices.DeleteFunc(names, func(s string) bool { return strings.TrimSpace(s) == "" })
}
