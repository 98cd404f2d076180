package decide

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

func newSign(t reflect.Type, x rules.Sign) (sign, error) {
	if len(x.Sum) > 0 {
		return newComparison(t, x)
	}
	f, err := fieldOf(t, x.Fact)
	if err != nil {
		return nil, err
	}
	i, optional := f.Index[0], strings.HasSuffix(f.Tag.Get("json"), ",omitzero")
	switch x.Is {
	case rules.Holds:
		return func(v reflect.Value) bool { return holds(v.Field(i), optional) }, nil
	case rules.Denied:
		return func(v reflect.Value) bool { return !holds(v.Field(i), optional) }, nil
	case rules.False:
		return func(v reflect.Value) bool { return isKnown(v.Field(i), optional) && !holds(v.Field(i), optional) }, nil
	case rules.AnyOf:
		return func(v reflect.Value) bool { return isKnown(v.Field(i), optional) && anyOf(v.Field(i), x.Words) }, nil
	case rules.NoneOf:
		return func(v reflect.Value) bool { return !anyOf(v.Field(i), x.Words) }, nil
	case rules.Filled:
		return func(v reflect.Value) bool { return v.Field(i).Len() > 0 }, nil
	}
	return nil, fmt.Errorf("guard: nothing can be %q", x.Is)
}

// isKnown says whether a fact is there at all.
func isKnown(v reflect.Value, optional bool) bool { return !optional || known(v) }

// holds is what a fact is worth alone in a rule: only false and what is not known fail.
func holds(v reflect.Value, optional bool) bool {
	if !isKnown(v, optional) {
		return false
	}
	if v.Type() == boolType {
		v = v.Field(0)
	}
	return v.Kind() != reflect.Bool || v.Bool()
}

func anyOf(v reflect.Value, words []string) bool {
	if v.Kind() == reflect.String {
		return slices.Contains(words, v.String())
	}
	return slices.ContainsFunc(words, func(w string) bool {
		for i := range v.Len() {
			if v.Index(i).String() == w {
				return true
			}
		}
		return false
	})
}

var (
	boolType = reflect.TypeFor[facts.Bool]()
	intType  = reflect.TypeFor[facts.Int]()
)

// far is beyond any real fact. The engine counts without end and Go does not, so beyond it the rule itself must judge.
const far = 1 << 38

// part is one fact of a sum.
type part struct {
	index int
	times int64
}

func newComparison(t reflect.Type, x rules.Sign) (sign, error) {
	holds := comparisons[x.Is]
	if holds == nil {
		return nil, fmt.Errorf("guard: no comparison %q", x.Is)
	}
	var parts []part
	for _, s := range x.Sum {
		f, err := fieldOf(t, s.Fact)
		if err != nil {
			return nil, err
		}
		parts = append(parts, part{f.Index[0], s.Times})
	}
	return func(v reflect.Value) bool {
		sum := x.Plus
		for _, p := range parts {
			n := v.Field(p.index)
			if n.Type() == intType {
				if !n.Field(1).Bool() {
					return false
				}
				n = n.Field(0)
			}
			if n.Int() > far || n.Int() < -far {
				return true
			}
			sum += p.times * n.Int()
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
