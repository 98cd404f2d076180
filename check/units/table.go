package units

import (
	"fmt"
	"math"
	"strings"
)

// Unit is the name a unit is printed with, such as "psig" or "mm".
type Unit string

// scale turns a number in one unit into SI: SI = (number + zero) * factor.
type scale struct {
	name      Unit
	factor    float64
	zero      float64
	spellings []string
}

func (s scale) si(number float64) float64 { return (number + s.zero) * s.factor }
func (s scale) number(si float64) float64 { return si/s.factor - s.zero }

// table lists the units of one quantity; the first is its default for printing.
type table struct {
	quantity string // with article, as in "a length"
	example  string
	lowest   float64
	highest  float64
	scales   []scale
	hints    map[string]string // plain spelling -> why it is refused and what to write
}

// read parses a number with a unit of the table and checks it is plausible.
func (t *table) read(s string) (float64, scale, error) {
	number, spelling, err := splitNumber(s, t.example)
	if err != nil {
		return 0, scale{}, err
	}
	return t.convert(s, number, spelling)
}

func (t *table) convert(s string, number float64, spelling string) (float64, scale, error) {
	if spelling == "" {
		return 0, scale{}, fmt.Errorf("%s has no unit: write %s like %s", quote(s), t.quantity, t.example)
	}
	found, err := t.find(spelling)
	if err != nil {
		return 0, scale{}, fmt.Errorf("%s: %w", quote(s), err)
	}
	si := found.si(number)
	return si, found, t.plausible(s, si)
}

// plausible refuses values no line can have; they are slips of unit or of the pen.
func (t *table) plausible(s string, si float64) error {
	switch {
	case si < t.lowest && t.lowest == 0 && t.scales[0].zero == 0:
		return fmt.Errorf("%s is below zero, which %s cannot be", quote(s), t.quantity)
	case si < t.lowest:
		return fmt.Errorf("%s is below the lowest plausible value for %s (%s)", quote(s), t.quantity, t.bound(t.lowest))
	case si > t.highest || math.IsNaN(si):
		return fmt.Errorf("%s is beyond the highest plausible value for %s (%s)", quote(s), t.quantity, t.bound(t.highest))
	}
	return nil
}

func (t *table) bound(si float64) string {
	first := t.scales[0]
	return digits(first.number(si), 5, 1) + " " + string(first.name)
}

// find looks for the exact spelling first, so that mohm and Mohm stay apart, then without case.
func (t *table) find(spelling string) (scale, error) {
	for _, s := range t.scales {
		if string(s.name) == spelling { // what nearly every sheet types
			return s, nil
		}
	}
	var folded []scale
	for _, s := range t.scales {
		switch s.match(spelling) {
		case exact:
			return s, nil
		case apartFromCase:
			folded = append(folded, s)
		}
	}
	switch {
	case len(folded) == 1:
		return folded[0], nil
	case len(folded) > 1:
		return scale{}, fmt.Errorf("unit %s can be read as %s or %s: type its capitals as shown", quote(spelling), folded[0].name, folded[1].name)
	}
	return scale{}, t.unknown(spelling)
}

type likeness int

const (
	different likeness = iota
	apartFromCase
	exact
)

func (s scale) match(spelling string) likeness {
	best := different
	for _, known := range append([]string{string(s.name)}, s.spellings...) {
		switch {
		case compact(known) == compact(spelling):
			return exact
		case plain(known) == plain(spelling):
			best = apartFromCase
		}
	}
	return best
}

func (t *table) unknown(spelling string) error {
	if hint, ok := t.hints[plain(spelling)]; ok {
		return fmt.Errorf("unit %s %s", quote(spelling), hint)
	}
	var names, all []string
	for _, s := range t.scales {
		names = append(names, string(s.name))
		all = append(append(all, string(s.name)), s.spellings...)
	}
	return fmt.Errorf("unknown unit %s for %s%s (known: %s)", quote(spelling), t.quantity, didYouMean(spelling, all), strings.Join(names, ", "))
}

// in converts SI to the number of the named unit.
func (t *table) in(si float64, unit Unit) (float64, error) {
	s, err := t.find(string(unit))
	if err != nil {
		return 0, err
	}
	return s.number(si), nil
}

// print shows SI in the named unit; an unknown unit falls back to the default one,
// and since the unit is always printed the value stays true.
func (t *table) print(si float64, unit Unit) string {
	s, err := t.find(string(unit))
	if err != nil {
		s = t.scales[0]
	}
	return digits(s.number(si), 4, 1) + " " + string(s.name)
}

// keep gives the zero value with any error, so a refused number is never used.
func keep[T ~float64](si float64, err error) (T, error) {
	if err != nil {
		return 0, err
	}
	return T(si), nil
}
