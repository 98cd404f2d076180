package inspect

import (
	"fmt"
	"slices"
	"strings"

	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Field is one reading that is asked for.
type Field struct {
	Key    string // of the record
	Verb   string // look, read, measure
	Label  string // what to do
	Expect string // what the sheet says; empty when it does not
	put    func(text string) error
}

// The verbs, in the order of a walk.
const (
	Look    = "look"
	Read    = "read"
	Measure = "measure"
)

// leaf is a reading that has a place in the sheet.
func leaf[T any](key, verb, label string, of *sheet.Of[T], parse func(string) (T, error)) Field {
	f := Field{Key: key, Verb: verb, Label: label}
	if of.Set {
		f.Expect = of.Text
	}
	f.put = func(text string) error {
		v, err := parse(text)
		if err == nil {
			*of = sheet.Of[T]{V: v, Set: true, Pos: of.Pos, Text: text}
		}
		return err
	}
	return f
}

// list is a reading of several words, divided by commas.
func list(key, verb, label string, of *[]sheet.Of[string], allowed []string) Field {
	f := Field{Key: key, Verb: verb, Label: label, Expect: joined(*of)}
	f.put = func(text string) error {
		pos := sheet.Pos{}
		if len(*of) > 0 {
			pos = (*of)[0].Pos
		}
		var out []sheet.Of[string]
		for _, w := range strings.Split(text, ",") {
			v, err := oneOf(allowed)(strings.TrimSpace(w))
			if err != nil {
				return err
			}
			out = append(out, sheet.Of[string]{V: v, Set: true, Pos: pos, Text: v})
		}
		*of = out
		return nil
	}
	return f
}

func joined(of []sheet.Of[string]) string {
	var out []string
	for _, w := range of {
		out = append(out, w.V)
	}
	return strings.Join(out, ", ")
}

// oneOf takes any text when no words are given.
func oneOf(allowed []string) func(string) (string, error) {
	return func(text string) (string, error) {
		if len(allowed) > 0 && !slices.Contains(allowed, text) {
			return "", fmt.Errorf("%q is not known here: use %s", text, strings.Join(allowed, ", "))
		}
		return text, nil
	}
}

func yes(text string) (bool, error) {
	switch strings.ToLower(text) {
	case "yes", "true":
		return true, nil
	case "no", "false":
		return false, nil
	}
	return false, fmt.Errorf("%q: write yes or no", text)
}

// conditions are the words of the sheet for what is seen on a hose.
var conditions = []string{"sound", "kinked", "crushed", "cover-damaged", "reinforcement-exposed", "blistered", "soft-spot", "leaking", "coupling-damaged", "coupling-slipped", "braid-damaged", "cover-pricked"}

func hoseFields(p *sheet.Part, oxygen bool) []Field {
	out := []Field{
		list("condition", Look, "along its whole length, also below: "+strings.Join(conditions, ", "), &p.Condition, conditions),
		leaf("tag", Read, "identity on the hose", &p.Tag, oneOf(nil)),
		list("marks", Read, "everything printed on it, divided by commas", &p.Marks, nil),
		leaf("readable", Read, "can the marks be read: yes or no", &p.Readable, yes),
		leaf("tested", Read, "date of the last pressure test", &p.Tested, units.ParseDate),
	}
	out = append(out, stated(p.Rated, "rated", "working pressure marked", &p.Rated)...)
	if p.Made.Set {
		out = append(out, leaf("made", Read, "date it was made", &p.Made, units.ParseDate))
	}
	if p.Grade.Set && p.Grade.V != "none" {
		out = append(out, leaf("resistance", Measure, "ohm from end fitting to end fitting, both ends free"+limitText(p.Grade.V), &p.Resistance, units.ParseResistance))
	}
	return append(out, shared(p, oxygen)...)
}

func stated(of sheet.Of[units.Pressure], key, label string, to *sheet.Of[units.Pressure]) []Field {
	if !of.Set {
		return nil
	}
	return []Field{leaf(key, Read, label, to, units.ParsePressure)}
}

func shared(p *sheet.Part, oxygen bool) (out []Field) {
	if p.Bonded.Set {
		out = append(out, leaf("bonded", Look, "bonding in place and tight: yes or no", &p.Bonded, yes))
	}
	if oxygen {
		out = append(out, leaf("oxygen_clean", Look, "clean, dry and free of oil and grease, with its cleaning label: yes or no", &p.OxyClean, yes))
	}
	return out
}

// partFields are those of anything but a hose; damage is judged here, for the sheet has no place for it.
func partFields(p *sheet.Part, oxygen bool) []Field {
	out := []Field{{Key: "damage", Verb: Look, Label: lookAt(p.Kind.V) + "; write none, or what is wrong"}}
	out = append(out, stated(p.Rated, "rated", "pressure on its plate", &p.Rated)...)
	switch p.Kind.V {
	case "regulator":
		out = append(out, stated(p.InletRated, "inlet_rated", "inlet pressure on its plate", &p.InletRated)...)
	case "relief":
		out = append(out, leaf("set", Read, "set pressure on its plate or seal", &p.Set, units.ParsePressure))
		out = append(out, leaf("isolatable", Look, "can any valve cut it off: yes or no", &p.Isolatable, yes))
	case "gauge":
		out = append(out, stated(p.Range, "range", "full scale", &p.Range)...)
		out = append(out, Field{Key: "at_rest", Verb: Read, Label: "does it stand at zero with the line open: yes or no"})
	}
	if p.Tested.Set {
		out = append(out, leaf("tested", Read, "date of the last test", &p.Tested, units.ParseDate))
	}
	return append(out, shared(p, oxygen)...)
}

func lookAt(kind string) string {
	switch kind {
	case "valve":
		return "handle, stem, body and bolts; it moves through its whole way and shuts"
	case "regulator":
		return "body and outlet gauge; backed off before the source opens; no creep once it is shut"
	case "relief":
		return "seal unbroken, outlet free and pointing where it hurts nobody"
	case "check-valve":
		return "body, and its arrow: in the direction of flow"
	case "pump":
		return "shaft seal, base and guard; turns free; suction full"
	case "gauge":
		return "glass, pointer and damping"
	case "coupling", "breakaway", "nozzle":
		return "faces, latches and pins; it locks and lets go"
	case "weight":
		return "hangs so that it does not pinch the hose"
	}
	return "body, threads, bolts: cracks, corrosion, leaks"
}
