package register

import (
	"cmp"
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/sheet"
)

// hoses are the hoses of a sheet that bear an identity.
func hoses(l *sheet.Line, cat *catalog.Catalog) (out []Hose) {
	ids, products := fluids(l, cat)
	known := []string{}
	for _, id := range ids {
		known = append(known, id)
	}
	for _, run := range l.Runs {
		carried := []string{}
		for _, name := range run.V.Carries {
			if products[name.V] {
				carried = append(carried, ids[name.V])
			}
		}
		for i := range run.V.Parts {
			p := &run.V.Parts[i]
			if p.Kind.V != "hose" {
				continue
			}
			if tag := identity(p); tag != "" {
				out = append(out, Hose{tag, p.ID.V, sorted(carried), sorted(known)})
			}
		}
	}
	return out
}

// fluids are the catalog ids of the names that the sheet gives to fluids, and which of them are products.
func fluids(l *sheet.Line, cat *catalog.Catalog) (ids map[string]string, products map[string]bool) {
	ids, products = map[string]string{}, map[string]bool{}
	for _, f := range l.Fluids {
		id, err := cat.ID(catalog.Fluids, f.V.Fluid.V)
		if err != nil {
			id = f.V.Fluid.V
		}
		ids[f.Key] = id
		products[f.Key] = f.V.Role.V == "product" || f.V.Role.V == ""
	}
	return ids, products
}

// Meeting is one hose or line number that stands where it can be at one time only, or a hose whose contents changed.
type Meeting struct {
	Kind  string   `json:"kind"` // two lines, two places, previous contents, line twice
	Tag   string   `json:"tag,omitempty"`
	Date  string   `json:"date"`
	Lines []string `json:"lines"`
	Count int      `json:"count"` // of lines; Lines names the first of them
	Text  string   `json:"text"`
}

const shownLines = 6 // of one hose; a word for no tag that is not known as such would fill the page

// use is one hose on one sheet.
type use struct {
	tag, line, path, part, asOf string
	undated                     bool
	*contents
}

// contents are shared by all hoses that carry the same.
type contents struct{ products, known []string }

// fleet follows hoses across lines. It keeps some hundred bytes for each name, so it keeps only those that were met twice.
type fleet struct {
	met    func(of named, name string) bool
	uses   map[string][]use    // by tag, alike
	latest map[string]string   // day of the last sheet of each line that has several, alike
	first  map[string]string   // path by line and day
	others map[string][]string // all paths, where there are several
	words  map[string]string
	shared map[string]*contents
}

func newFleet(met func(of named, name string) bool) *fleet {
	return &fleet{met, map[string][]use{}, map[string]string{}, map[string]string{}, map[string][]string{}, map[string]string{}, map[string]*contents{}}
}

// one keeps a single copy of a word that many sheets repeat.
func (f *fleet) one(word string) string {
	if w, ok := f.words[word]; ok {
		return w
	}
	word = strings.Clone(word)
	f.words[word] = word
	return word
}

func (f *fleet) contents(h Hose) *contents {
	key := strings.Join(h.Products, "\x00") + "\x01" + strings.Join(h.Known, "\x00")
	if f.shared[key] == nil {
		f.shared[key] = &contents{h.Products, h.Known}
	}
	return f.shared[key]
}

func (f *fleet) add(e *Entry) {
	if e.Line == "" || e.bad() {
		return
	}
	line, day := strings.Clone(e.Line), f.one(e.AsOf)
	if key := alike(line); f.met(ofLine, key) {
		f.latest[key] = max(f.latest[key], day)
		f.place(key+"\x00"+day, e.Path)
	}
	for _, h := range e.Hoses {
		tag := alike(h.Tag)
		if !f.met(ofHose, tag) {
			continue
		}
		f.uses[tag] = append(f.uses[tag], use{tag, line, e.Path, f.one(h.Part), day, e.Undated, f.contents(h)})
	}
}

func (f *fleet) place(key, path string) {
	first, ok := f.first[key]
	if !ok {
		f.first[key] = path
		return
	}
	if f.others[key] == nil {
		f.others[key] = []string{first}
	}
	f.others[key] = append(f.others[key], path)
}

// meetings are sorted by kind, tag and day.
func (f *fleet) meetings() (out []Meeting) {
	for tag, uses := range f.uses {
		if len(uses) < 2 {
			continue
		}
		slices.SortFunc(uses, func(a, b use) int {
			return cmp.Or(cmp.Compare(a.asOf, b.asOf), cmp.Compare(a.line, b.line), cmp.Compare(a.path, b.path), cmp.Compare(a.part, b.part))
		})
		out = append(out, f.twoLines(tag, uses)...)
		out = append(out, twoPlaces(tag, uses)...)
		out = append(out, previous(tag, uses)...)
	}
	for key, paths := range f.others {
		line, day, _ := strings.Cut(key, "\x00")
		out = append(out, meeting("line twice", "", day, paths, "several sheets of one day bear the line number "+line))
	}
	slices.SortFunc(out, func(a, b Meeting) int {
		return cmp.Or(cmp.Compare(rank[a.Kind], rank[b.Kind]), cmp.Compare(a.Tag, b.Tag), cmp.Compare(a.Date, b.Date), cmp.Compare(a.Text, b.Text))
	})
	return out
}

var rank = map[string]int{"two lines": 0, "two places": 1, "previous contents": 2, "line twice": 3}

func meeting(kind, tag, day string, where []string, text string) Meeting {
	where = sorted(where)
	return Meeting{kind, tag, day, where[:min(len(where), shownLines)], len(where), text}
}

// twoLines looks at the last sheet of each line alone: a hose that a later sheet no longer names has left the line.
func (f *fleet) twoLines(tag string, uses []use) []Meeting {
	var lines, days []string
	several := false
	for _, u := range uses {
		if latest, ok := f.latest[alike(u.line)]; !ok || u.asOf == latest {
			lines, days = append(lines, u.line), append(days, u.asOf)
			several = several || alike(u.line) != alike(lines[0])
		}
	}
	if !several {
		return nil
	}
	text := "one hose in several lines on the same day"
	if first, last := slices.Min(days), slices.Max(days); first != last {
		text = "one hose in several lines: sheets of " + first + " to " + last + " name it, and none shows that it left"
	}
	return []Meeting{meeting("two lines", tag, slices.Max(days), lines, text)}
}

func twoPlaces(tag string, uses []use) (out []Meeting) {
	for i := 1; i < len(uses); i++ {
		a, b := uses[i-1], uses[i]
		if a.path == b.path && a.part != b.part {
			out = append(out, meeting("two places", tag, b.asOf, []string{b.line + " " + a.part, b.line + " " + b.part}, "one identity on two hoses of a sheet"))
		}
	}
	return out
}

// previous finds a hose that on the day before carried a product which the later sheet does not name, not even as previous
// contents. The order within a day is not known, so each sheet of the one day is held against each of the other.
func previous(tag string, uses []use) (out []Meeting) {
	var before, today []use
	for _, u := range uses {
		if len(today) > 0 && u.asOf != today[0].asOf {
			before, today = today, nil
		}
		today = append(today, u)
		for _, b := range before {
			if strange := without(b.products, u.known); len(strange) > 0 {
				text := "carried " + strings.Join(strange, ", ") + " in " + b.line + " on " + b.asOf + "; the sheet of " + u.line + " does not name it as previous contents"
				if u.undated {
					text += " (it bears no date, and counts as of " + u.asOf + ")"
				}
				out = append(out, meeting("previous contents", tag, u.asOf, []string{b.line, u.line}, text))
			}
		}
	}
	return out
}
