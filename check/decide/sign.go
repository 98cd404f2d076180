package decide

import (
	"fmt"
	"reflect"
	"slices"
	"unsafe"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

func newSign(t reflect.Type, x rules.Sign) (sign, error) {
	if len(x.Sum) > 0 {
		return newComparison(t, x)
	}
	field, err := fieldOf(t, x.Fact)
	if err != nil {
		return nil, err
	}
	f, err := factOf(field)
	if err != nil {
		return nil, err
	}
	switch x.Is {
	case rules.Holds:
		return f.holds, nil
	case rules.Denied:
		return func(p unsafe.Pointer) bool { return !f.holds(p) }, nil
	case rules.False:
		return func(p unsafe.Pointer) bool { return f.known(p) && !f.holds(p) }, nil
	}
	return wordSign(f, field, x)
}

// wordSign is a sign that only words or lists have.
func wordSign(f fact, field reflect.StructField, x rules.Sign) (sign, error) {
	words := f.form == text || field.Type == reflect.TypeFor[[]string]()
	switch {
	case x.Is == rules.AnyOf && words:
		return func(p unsafe.Pointer) bool { return anyOf(f.words(p), x.Words) }, nil
	case x.Is == rules.NoneOf && words:
		return func(p unsafe.Pointer) bool { return !anyOf(f.words(p), x.Words) }, nil
	case x.Is == rules.Filled && (words || f.form == list):
		return func(p unsafe.Pointer) bool { return f.len(p) > 0 }, nil
	}
	return nil, fmt.Errorf("guard: %s cannot be %q", x.Fact, x.Is)
}

// anyOf is false for a word that is not known: no rule asks for the empty one.
func anyOf(known, wanted []string) bool {
	return slices.ContainsFunc(known, func(w string) bool { return slices.Contains(wanted, w) })
}

var (
	boolType = reflect.TypeFor[facts.Bool]()
	intType  = reflect.TypeFor[facts.Int]()
)

// far is beyond any real fact. The engine counts without end and Go does not, so beyond it the rule itself must judge.
const far = 1 << 38

// part is one fact of a sum.
type part struct {
	fact
	times int64
}

func newComparison(t reflect.Type, x rules.Sign) (sign, error) {
	holds := comparisons[x.Is]
	if holds == nil {
		return nil, fmt.Errorf("guard: no comparison %q", x.Is)
	}
	var parts []part
	for _, s := range x.Sum {
		field, err := fieldOf(t, s.Fact)
		if err != nil {
			return nil, err
		}
		f, err := factOf(field)
		if err == nil && f.form != number && f.form != marked {
			err = fmt.Errorf("guard: %s is no number", s.Fact)
		}
		if err != nil {
			return nil, err
		}
		parts = append(parts, part{f, s.Times})
	}
	return func(p unsafe.Pointer) bool {
		sum := x.Plus
		for i := range parts {
			n, known := parts[i].number(p)
			if !known {
				return false
			}
			if n > far || n < -far {
				return true
			}
			sum += parts[i].times * n
		}
		return holds(sum)
	}, nil
}

var comparisons = map[string]func(int64) bool{
	"<":  func(n int64) bool { return n < 0 },
	"<=": func(n int64) bool { return n <= 0 },
	">":  func(n int64) bool { return n > 0 },
	">=": func(n int64) bool { return n >= 0 },
	"==": func(n int64) bool { return n == 0 },
	"!=": func(n int64) bool { return n != 0 },
}
