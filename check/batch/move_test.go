package batch

import (
	"math/rand/v2"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineworthy/check/facts"
)

// mover changes some of the facts of a line, and leaves the line a document that can be read.
type mover struct {
	chance *rand.Rand
	words  []string
}

// laws gives the line a few more.
func (m mover) laws(f *facts.Facts) {
	for range m.chance.IntN(6) {
		f.Line.Regimes = append(f.Line.Regimes, m.words[m.chance.IntN(len(m.words))])
	}
	slices.Sort(f.Line.Regimes)
}

// move takes one fact in eight: a number goes up or down by one or becomes that of a neighbour, an answer turns, what may
// be unknown becomes so.
func (m mover) move(v reflect.Value) {
	var numbers []int64
	for i := range v.NumField() {
		if x, ok := v.Field(i).Interface().(facts.Int); ok && x.Known {
			numbers = append(numbers, x.V)
		}
	}
	for i := range v.NumField() {
		switch x := v.Field(i).Addr().Interface().(type) {
		case *facts.Int:
			m.number(x, numbers)
		case *facts.Bool:
			if m.often() {
				*x = facts.Bool{V: m.chance.IntN(2) == 0, Known: m.chance.IntN(3) > 0}
				x.V = x.V && x.Known
			}
		case *bool:
			*x = *x != m.often()
		case *string:
			m.word(x, v.Type().Field(i).Tag)
		case *[]string:
		case *[]facts.Unknown:
		default:
			m.inside(v.Field(i))
		}
	}
}

func (m mover) often() bool { return m.chance.IntN(8) == 0 }

func (m mover) number(x *facts.Int, others []int64) {
	switch {
	case !m.often():
	case len(others) == 0 || m.chance.IntN(4) == 0:
		*x = facts.Int{}
	default:
		*x = facts.Know(others[m.chance.IntN(len(others))] + m.chance.Int64N(3) - 1)
	}
}

// word takes another of those permitted.
func (m mover) word(x *string, tag reflect.StructTag) {
	if list := tag.Get("words"); list != "" && m.often() {
		among := strings.Split(list, ",")
		*x = among[m.chance.IntN(len(among))]
	}
}

func (m mover) inside(v reflect.Value) {
	switch v.Kind() {
	case reflect.Slice:
		for i := range v.Len() {
			m.move(v.Index(i))
		}
	case reflect.Struct:
		m.move(v)
	}
}

// setter makes up lines for one rule out of the words and numbers in its text.
type setter struct {
	chance  *rand.Rand
	words   []string
	numbers []int64
	n       int
}

var (
	literal    = regexp.MustCompile(`"[a-z_]+":|"([^"\\]*)"|\b\d+\b`) // a key of a report is none
	collection = regexp.MustCompile(`\binput\.([a-z]+)`)
)

// newSetter reads what stands behind the METADATA, and the ids that facts refer to each other by.
func newSetter(rule string) *setter {
	s := &setter{chance: rand.New(rand.NewPCG(26, 27)), numbers: []int64{1}}
	rule = rule[strings.Index(rule, "\npackage "):]
	for _, m := range collection.FindAllStringSubmatch(rule, -1) {
		s.words = append(s.words, m[1]+" 0")
	}
	for _, m := range literal.FindAllStringSubmatch(rule, -1) {
		if n, err := strconv.ParseInt(m[0], 10, 64); err == nil && n > 0 && n < 1<<40 {
			s.numbers = append(s.numbers, n)
		} else if m[1] != "" {
			s.words = append(s.words, m[1])
		}
	}
	return s
}

func (s *setter) line() *facts.Facts {
	f := facts.Any(s.chance.IntN, s.words)
	part := []string{"", s.words[s.chance.IntN(len(s.words))]}[s.n%2]
	s.near(reflect.ValueOf(f).Elem(), []int64{0, 30, 600, 2400}[s.chance.IntN(4)], part)
	if s.n%8 < 6 {
		f.Line.Regimes = s.words // every law that the rule knows
	}
	for i := range f.Parts { // every hose is a part too
		f.Parts[i].ID = []string{"parts", "hoses"}[s.n/2%2] + f.Parts[i].ID[len("parts"):]
	}
	if s.n++; s.n%3 == 0 {
		f.Line.AsOfDay += 20000
	}
	return f
}

// near puts most numbers at those that the rule compares with, or so many times one base, and everything in one part.
func (s *setter) near(v reflect.Value, base int64, part string) {
	switch v.Kind() {
	case reflect.Slice:
		for i := range v.Len() {
			s.near(v.Index(i), base, part)
		}
	case reflect.Struct:
		if x, ok := v.Addr().Interface().(*facts.Int); ok {
			s.number(x, base)
			return
		}
		for i := range v.NumField() {
			if v.Type().Field(i).Name == "Part" && v.Field(i).Kind() == reflect.String && part != "" {
				v.Field(i).SetString(part)
			}
			s.near(v.Field(i), base, part)
		}
	}
}

func (s *setter) any() int64 { return s.numbers[s.chance.IntN(len(s.numbers))] }

func (s *setter) number(x *facts.Int, base int64) {
	if !x.Known || s.chance.IntN(4) == 0 {
		return
	}
	if x.V = s.any(); base > 0 && s.chance.IntN(2) == 0 {
		x.V = base * s.any() / s.any()
	}
	x.V += s.chance.Int64N(3) - 1
}
