package inspect

import (
	"strings"

	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// conditions are the words of the sheet for what is seen on a hose.
var conditions = []string{"sound", "kinked", "crushed", "cover-damaged", "reinforcement-exposed", "blistered", "soft-spot", "leaking", "coupling-damaged", "coupling-slipped", "braid-damaged", "cover-pricked"}

func hoseFields(p *sheet.Part, oxygen, fuel bool) []Field {
	out := []Field{
		list("condition", Look, "along its whole length, also below: "+strings.Join(conditions, ", "), &p.Condition, conditions),
		leaf("tag", Read, "identity on the hose", &p.Tag, oneOf(nil)),
		printed(list("marks", Read, "everything printed on it, divided by commas", &p.Marks, nil)),
		leaf("readable", Read, "can the marks be read: yes or no", &p.Readable, yes),
		leaf("tested", Read, "date of the last pressure test, on its tag or certificate", &p.Tested, units.ParseDate),
	}
	if p.Rated.Set {
		out = append(out, stated(p.Rated, "rated", "working pressure marked", &p.Rated)...)
	} else {
		out = append(out, leaf("rated", Read, "working pressure marked", &p.Rated, units.ParsePressure))
	}
	if p.Made.Set {
		out = append(out, made(p))
	}
	if p.Bend.Set {
		out = append(out, leaf("bend", Measure, "smallest radius it is bent to as it lies", &p.Bend, units.ParseLength))
	}
	if p.Restraint.Set {
		out = append(out, Field{Key: "restraint", Verb: Look, Label: "whip restraint of " + p.Restraint.Text + " whole and hooked at both ends: yes or no", mend: "Fit the restraint of the sheet at both ends, and look again."})
	}
	if p.Grade.Set && p.Grade.V != "none" {
		out = append(out, leaf("resistance", Measure, "ohm from end fitting to end fitting, both ends free"+limitText(p.Grade.V), &p.Resistance, units.ParseResistance))
	}
	return append(out, shared(p, oxygen, fuel)...)
}

func shared(p *sheet.Part, oxygen, fuel bool) (out []Field) {
	if p.Bonded.Set {
		out = append(out, off(leaf("bonded", Look, "bonding in place and tight: yes or no", &p.Bonded, yes), fuel))
	}
	if oxygen {
		out = append(out, leaf("oxygen_clean", Look, "clean, dry and free of oil and grease, with its cleaning label: yes or no", &p.OxyClean, yes))
	}
	return out
}

// partFields are those of anything but a hose; damage is judged here, for the sheet has no place for it.
func partFields(p *sheet.Part, oxygen, fuel bool) []Field {
	out := []Field{{Key: "damage", Verb: Look, Label: lookAt(p.Kind.V) + "; write none, or what is wrong"}}
	out = append(out, stated(p.Rated, "rated", "pressure on its plate", &p.Rated)...)
	switch p.Kind.V {
	case "regulator":
		out = append(out, stated(p.InletRated, "inlet_rated", "inlet pressure on its plate", &p.InletRated)...)
	case "relief":
		out = append(out, exactly(leaf("set", Read, "set pressure on its plate or seal", &p.Set, units.ParsePressure), "it is not the device judged", otherDevice))
		out = append(out, leaf("isolatable", Look, "can any valve cut it off: yes or no", &p.Isolatable, yes))
	case "excess-flow":
		if p.ClosesAt.Set {
			out = append(out, exactly(leaf("closing_flow", Read, "flow at which it closes, on its plate", &p.ClosesAt, units.ParseVolumeFlow), "it is not the device judged", otherDevice))
		}
	case "closure":
		if p.Form.Set {
			out = append(out, leaf("form", Look, "what closes the end: cap, plug, blind-flange, dust-cap or none", &p.Form, oneOf([]string{"cap", "plug", "blind-flange", "dust-cap", "none"})))
		}
	case "gauge":
		out = append(out, stated(p.Range, "range", "full scale", &p.Range)...)
		out = append(out, Field{Key: "at_rest", Verb: Read, Label: "does it stand at zero with the line open: yes or no"})
	}
	if p.Tested.Set {
		out = append(out, leaf("tested", Read, "date of the last test, on its tag or certificate", &p.Tested, units.ParseDate))
	}
	return append(out, shared(p, oxygen, fuel)...)
}

const otherDevice = "Take it out of use. Fit the device of the sheet, or put the sheet right and have it judged anew."

func lookAt(kind string) string {
	switch kind {
	case "valve":
		return "handle, stem, body and bolts; it moves through its whole way and shuts"
	case "regulator":
		return "body and outlet gauge; backed off before the source opens; no creep once it is shut"
	case "relief":
		return "seal unbroken, outlet free and pointing where it hurts nobody"
	case "check-valve", "excess-flow":
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
