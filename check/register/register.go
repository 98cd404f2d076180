package register

import (
	"cmp"
	"errors"
	"iter"
	"slices"
	"unicode/utf8"

	"lineworthy/check/report"
	"lineworthy/check/units"
)

// Register is what a run found: the summaries stay on the disk, and what is added up over them is here.
type Register struct {
	o       Options
	day     units.Date
	state   *state
	earlier *state // of --against; nil without
	places  []place
	spots   *spots
	papers  *papers
	slips   *slips
	bad     []int32 // entries without a verdict
	dates   []dated
	words   map[string]int // lines by verdict; bad and broken for those without
	judged  int
	widest  int // letters of the longest line number
}

// dated is one date of the due list. Its entry says the rest.
type dated struct {
	date  int32 // days since 1970-01-01
	entry int32
	due   int32
}

func (r *Register) add(e *Entry, p place) error {
	n := int32(len(r.places))
	r.places = append(r.places, p)
	r.widest = max(r.widest, utf8.RuneCountInString(name(e)))
	r.words[kind(e)]++
	r.spots.add(e, n)
	r.papers.add(e)
	if e.bad() {
		r.bad = append(r.bad, n)
	}
	for i, d := range e.Due {
		on, err := units.ParseDate(d.Date)
		if err == nil && on.Days <= r.day.Days+r.o.DueDays {
			r.dates = append(r.dates, dated{int32(on.Days), n, int32(i)})
		}
	}
	return r.slips.add(row(e))
}

// kind is what the sheet is counted as.
func kind(e *Entry) string {
	switch {
	case e.Broken:
		return "broken"
	case e.bad():
		return "bad"
	}
	return string(e.Word)
}

// name is the line number, or the path of a sheet that could not be read.
func name(e *Entry) string { return cmp.Or(e.Line, e.Path) }

// Rows is the verdict table, in the order of the paths.
func (r *Register) Rows() iter.Seq2[Row, error] { return r.slips.rows() }

// faults are the entries of the sheets without a verdict.
func (r *Register) faults() iter.Seq2[*Entry, error] { return r.some(r.bad) }

// some reads entries by their numbers, on all cores, and gives them in that order up to the first error.
func (r *Register) some(numbers []int32) iter.Seq2[*Entry, error] {
	return func(yield func(*Entry, error) bool) {
		places := make([]place, 0, block)
		for part := range slices.Chunk(numbers, block) {
			places = places[:0]
			for _, n := range part {
				places = append(places, r.places[n])
			}
			for e, err := range r.state.all(places) {
				if !yield(e, err) || err != nil {
					return
				}
			}
		}
	}
}

// Close gives the state file free.
func (r *Register) Close() (err error) {
	for _, s := range []*state{r.state, r.earlier} {
		if s != nil {
			err = errors.Join(err, s.close())
		}
	}
	if r.slips != nil {
		err = errors.Join(err, r.slips.close())
	}
	return err
}

// Judged is how many sheets were judged in this run; the others were taken over from the state file.
func (r *Register) Judged() int { return r.judged }

// Sheets is how many there are.
func (r *Register) Sheets() int { return len(r.places) }

// Damaged is how many lines of the state file did not agree with their check.
func (r *Register) Damaged() int { return r.state.Damaged }

// Count is how many sheets have this verdict.
func (r *Register) Count(w report.Word) int { return r.words[string(w)] }

// Bad is how many sheets could not be judged, and of how many of those the fault lies in the tool.
func (r *Register) Bad() (sheets, tool int) {
	return r.words["bad"] + r.words["broken"], r.words["broken"]
}

// Entries are the summaries in the order of their paths, read from the disk one by one.
func (r *Register) Entries() iter.Seq2[*Entry, error] {
	return func(yield func(*Entry, error) bool) {
		for places := range slices.Chunk(r.places, block) {
			for e, err := range r.state.all(places) {
				if !yield(e, err) || err != nil {
					return
				}
			}
		}
	}
}

// block is how many entries are read at a time: enough for all cores, and a few MB.
const block = 512

// DueLine is one date with the line it belongs to.
type DueLine struct {
	Due
	Days    int    `json:"days"` // from the day of the register; negative when overdue
	Line    string `json:"line"`
	Path    string `json:"path"`
	Earlier bool   `json:"earlier_sheet"` // a later sheet of the line is in the folder: its dates count
}

// Due are the dates up to the last day asked for, the most overdue first.
func (r *Register) Due() iter.Seq2[DueLine, error] {
	slices.SortFunc(r.dates, func(a, b dated) int {
		return cmp.Or(cmp.Compare(a.date, b.date), cmp.Compare(a.entry, b.entry), cmp.Compare(a.due, b.due))
	})
	return func(yield func(DueLine, error) bool) {
		earlier, err := r.earlierSheets()
		if err != nil {
			yield(DueLine{}, err)
			return
		}
		numbers := make([]int32, len(r.dates))
		for i, d := range r.dates {
			numbers[i] = d.entry
		}
		i := 0
		for e, err := range r.some(numbers) {
			if err != nil {
				yield(DueLine{}, err)
				return
			}
			d := r.dates[i]
			if i++; !yield(DueLine{e.Due[d.due], int(d.date) - r.day.Days, e.Line, e.Path, earlier[d.entry]}, nil) {
				return
			}
		}
	}
}

// earlierSheets are the entries with a date in the list of whose line a later sheet is there too: a hose that was tested
// since would else be overdue for ever.
func (r *Register) earlierSheets() (map[int32]bool, error) {
	if len(r.dates) == 0 {
		return nil, nil
	}
	type sheet struct{ line, day string }
	seen, latest := map[int32]sheet{}, map[string]string{}
	several, i := r.spots.shared(ofLine), 0
	for e, err := range r.some(several) {
		if err != nil {
			return nil, err
		}
		s := sheet{alike(e.Line), e.AsOf}
		seen[several[i]], latest[s.line] = s, max(latest[s.line], s.day)
		i++
	}
	out := map[int32]bool{}
	for n, s := range seen {
		if s.day < latest[s.line] {
			out[n] = true
		}
	}
	return out, nil
}

// Evidence are the values to confirm, in the order in which they free lines.
func (r *Register) Evidence() []Evidence { return r.papers.ranked() }

// Meetings are hoses and line numbers that stand in several places, and hoses with other contents before.
func (r *Register) Meetings() ([]Meeting, error) {
	f := newFleet(r.spots.met)
	for e, err := range r.some(r.spots.shared(ofLine, ofHose)) {
		if err != nil {
			return nil, err
		}
		f.add(e)
	}
	return f.meetings(), nil
}

func daysAfter(d units.Date, days int) units.Date { return units.Date{Days: d.Days + days} }
