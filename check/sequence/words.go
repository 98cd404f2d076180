package sequence

import "strings"

// words says a step as one would call it out. Names of parts are added by the caller, who has the sheet.
var words = map[string]string{
	"check": "Check:", "bond": "Bond", "connect": "Connect", "open": "Open", "close": "Close", "set": "Set", "start": "Start",
	"stop": "Stop", "transfer": "Transfer", "drain": "Drain", "flush": "Flush", "vent": "Vent", "disconnect": "Disconnect",
}

// Says is the step in plain words.
func (m *Model) Says(s Step) string {
	item := m.called(s)
	text := words[s.Do] + " " + item
	switch s.Do {
	case "check":
		return words[s.Do] + " " + s.Text
	case "set":
		switch s.Pressure {
		case "none":
			text = "Back off " + item
		case "":
			text += " to the pressure of the sheet"
		default:
			text += " to " + s.Pressure
		}
	case "flush":
		text += m.flushing(s)
	case "vent":
		if s.To != "" && s.Text == "" {
			text += map[string]string{toClosed: " into an absorber or a closed vent", toOpen: " into the open"}[s.To]
		}
	case "transfer":
		text = "Transfer " + strings.TrimSpace(s.Quantity+" through "+m.through(s))
	}
	if s.Slowly {
		text += " slowly"
	}
	if s.Text != "" {
		text += ": " + s.Text
	}
	return text
}

func (m *Model) through(s Step) string {
	if r := (&play{Model: m}).liquidRun(s); r != nil {
		return r.key
	}
	return "the line"
}

// flushing says with how much of what, and where it goes.
func (m *Model) flushing(s Step) string {
	r, _, ok := (&play{Model: m}).place(s.Item)
	if !ok {
		return ""
	}
	with, into := "the flush", "the destination"
	if f, err := r.flushWith(s.Fluid); err == nil {
		with = f.Cat.Name
	}
	if s.Quantity != "" {
		with = s.Quantity + " of " + with
	}
	if r.to != nil {
		into = r.to.id
	}
	if s.To == toDrain {
		into = "a closed drain or container, not into " + into
	}
	return " with " + with + ", into " + into
}

// called is the item with its kind and its name on the sheet.
func (m *Model) called(s Step) string {
	if s.Item == "source" {
		for _, r := range m.runs {
			if s.Run == r.key || s.Run == "" && r.devices[0].kind == "source" {
				return r.sourceName()
			}
		}
	}
	for _, r := range m.line.Runs {
		for _, p := range r.Parts {
			if p.ID != s.Item {
				continue
			}
			if p.Sheet.Name.Set {
				return p.ID + " (" + p.Sheet.Name.V + ")"
			}
			return p.ID + " (" + p.Sheet.Kind.V + ")"
		}
	}
	return s.Item
}

func (r *run) sourceName() string {
	switch {
	case r.source != nil:
		return "the outlet valve of " + r.source.id + " (not on the sheet)"
	case r.r.Sheet.Source.Cylinder.Set:
		return "the cylinder valve of " + r.key
	}
	return "the valve of the supply of " + r.key
}
