package batch

import (
	"math/rand/v2"
	"reflect"
	"slices"
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
