package check

import (
	"reflect"
	"strings"

	"lineworthy/check/decide"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// places maps the names a finding can carry to where the sheet states them.
func places(l *resolve.Line) map[string]sheet.Pos {
	at := map[string]sheet.Pos{}
	for _, r := range l.Runs {
		for _, p := range r.Parts {
			at[p.ID] = p.Sheet.ID.Pos
		}
	}
	for _, n := range l.Sheet.Vessels {
		at[n.Key] = n.Pos
	}
	for _, n := range l.Sheet.Fluids {
		at[n.Key] = n.Pos
	}
	return at
}

// place finds the part, vessel or fluid that a finding is about.
func (p *printer) place(x decide.Finding) (sheet.Pos, bool) {
	for _, name := range []string{x.Part, x.Subject, x.Words["a"], x.Words["hose"], x.Words["vessel"]} {
		if at, ok := p.at[name]; ok {
			return at, true
		}
		first, _, _ := strings.Cut(strings.ReplaceAll(strings.ReplaceAll(name, ".", " "), "/", " "), " ")
		if at, ok := p.at[first]; ok {
			return at, true
		}
	}
	return sheet.Pos{}, false
}

var pressures, temperatures = reflect.TypeFor[sheet.Of[units.Pressure]](), reflect.TypeFor[sheet.Of[units.Temperature]]()

// systemOf are the units the sheet is written in: of each quantity the one used most, the first of equals.
func systemOf(l *sheet.Line) units.System {
	pressure, temperature := &tally{}, &tally{}
	walk(reflect.ValueOf(l), func(v reflect.Value) {
		switch x := v.Interface().(type) {
		case sheet.Of[units.Pressure]:
			pressure.add(x.Set, strings.Replace(strings.Replace(string(x.V.Unit), "(a)", "(g)", 1), "psia", "psig", 1))
		case sheet.Of[units.Temperature]:
			temperature.add(x.Set, scale(x.Text))
		}
	})
	sys := units.DefaultSystem()
	if pressure.best != "" {
		sys.Pressure = units.Unit(pressure.best)
	}
	if temperature.best != "" {
		sys.Temperature = units.Unit(temperature.best)
	}
	if sys.Check() != nil {
		return units.DefaultSystem()
	}
	return sys
}

func scale(text string) string {
	switch text[max(len(text)-1, 0):] {
	case "F", "f":
		return "°F"
	case "K":
		return "K"
	}
	return "°C"
}

// tally keeps the word seen most often.
type tally struct {
	n    map[string]int
	best string
}

func (t *tally) add(set bool, word string) {
	if !set || word == "" {
		return
	}
	if t.n == nil {
		t.n = map[string]int{}
	}
	t.n[word]++
	if t.n[word] > t.n[t.best] {
		t.best = word
	}
}

// walk visits every pressure and temperature of the sheet.
func walk(v reflect.Value, visit func(reflect.Value)) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			walk(v.Elem(), visit)
		}
	case reflect.Slice:
		for i := range v.Len() {
			walk(v.Index(i), visit)
		}
	case reflect.Struct:
		if measured(v.Type()) {
			visit(v)
			return
		}
		for _, i := range ways[v.Type()] {
			walk(v.Field(i), visit)
		}
	}
}

func measured(t reflect.Type) bool { return t == pressures || t == temperatures }

// ways are the fields of every struct of a sheet behind which there may be a pressure or temperature: most have none.
var ways = waysOf()

func waysOf() map[reflect.Type][]int {
	out := map[reflect.Type][]int{}
	var leads func(t reflect.Type) bool
	leads = func(t reflect.Type) bool {
		switch t.Kind() {
		case reflect.Pointer, reflect.Slice:
			return leads(t.Elem())
		case reflect.Struct:
			if measured(t) {
				return true
			}
			if _, known := out[t]; !known {
				out[t] = nil
				for i := range t.NumField() {
					if leads(t.Field(i).Type) {
						out[t] = append(out[t], i)
					}
				}
			}
			return len(out[t]) > 0
		}
		return false
	}
	leads(reflect.TypeFor[sheet.Line]())
	return out
}
