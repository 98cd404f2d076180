package batch

import (
	"math/rand/v2"
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"lineworthy/check/facts"
)

// setter makes up lines for one rule out of the words and numbers in its text.
type setter struct {
	chance  *rand.Rand
	words   []string
	numbers []int64
	said    map[string][]string // words that the rule compares a fact with
	wanted  map[string]bool     // answers that the rule asks for
	n       int
}

var (
	literal    = regexp.MustCompile(`"[a-z_]+":|"([^"\\]*)"|\b\d+\b`) // a key of a report is none
	collection = regexp.MustCompile(`\binput\.([a-z]+)`)
	compared   = regexp.MustCompile(`\.([a-z_]+) (?:==|in) ("[^"]*"|\{[^}]*\})`)
	asked      = regexp.MustCompile(`(?m)(?:^\t| if )(not )?[\w.]+\.([a-z_]+)(?: == (true|false))?$`)
)

// newSetter reads what stands behind the METADATA, and the ids that facts refer to each other by.
func newSetter(rule string) *setter {
	s := &setter{rand.New(rand.NewPCG(26, 27)), nil, []int64{1}, map[string][]string{}, map[string]bool{}, 0}
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
	for _, m := range compared.FindAllStringSubmatch(rule, -1) {
		for _, w := range literal.FindAllStringSubmatch(m[2], -1) {
			s.said[m[1]] = append(s.said[m[1]], w[1])
		}
	}
	for _, m := range asked.FindAllStringSubmatch(rule, -1) {
		s.wanted[m[2]] = m[1] == "" && m[3] != "false"
	}
	return s
}

func (s *setter) line() *facts.Facts {
	f := facts.Any(s.chance.IntN, s.words)
	parts := []string{"parts", "hoses"}[s.n/2%2] // every hose is a part too
	part := []string{"", parts + " 0"}[s.n%2]
	s.near(reflect.ValueOf(f).Elem(), []int64{0, 0, 0, 30, 600, 2400}[s.chance.IntN(6)], part)
	if s.n%8 < 6 {
		f.Line.Regimes = s.words // every law that the rule knows
	}
	for i := range f.Parts {
		f.Parts[i].ID = parts + f.Parts[i].ID[len("parts"):]
	}
	if s.n++; s.n%3 == 0 {
		f.Line.AsOfDay += 20000
	}
	return f
}

// near puts most numbers at those that the rule compares with, or so many times one base, most words and answers at what
// it asks for, and everything in one part and one run.
func (s *setter) near(v reflect.Value, base int64, part string) {
	switch v.Kind() {
	case reflect.Slice:
		for i := range v.Len() {
			s.near(v.Index(i), base, part)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			s.field(v.Field(i), v.Type().Field(i).Tag, base, part)
		}
	}
}

func (s *setter) field(v reflect.Value, tag reflect.StructTag, base int64, part string) {
	key, _, _ := strings.Cut(tag.Get("json"), ",")
	wanted, isAsked := s.wanted[key]
	isAsked = isAsked && s.chance.IntN(4) > 0
	switch x := v.Addr().Interface().(type) {
	case *facts.Int:
		s.number(x, base)
	case *facts.Bool:
		if isAsked && x.Known {
			x.V = wanted
		}
	case *bool:
		if isAsked {
			*x = wanted
		}
	case *string:
		if words := s.said[key]; len(words) > 0 && s.chance.IntN(4) > 0 {
			if w := words[s.chance.IntN(len(words))]; tag.Get("words") == "" || strings.Contains(tag.Get("words"), w) {
				*x = w
			}
		} else if key == "part" && part != "" {
			*x = part
		} else if key == "run" && s.chance.IntN(4) > 0 {
			*x = s.words[0]
		}
	default:
		s.near(v, base, part)
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
