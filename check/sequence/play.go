package sequence

import (
	"fmt"
	"slices"
	"strings"
)

// Outcome is what playing a sequence came to.
type Outcome struct {
	Faults   []Fault   `json:"faults"`
	Open     []string  `json:"open"`     // what is not known, so that something could not be judged
	Efforts  []Effort  `json:"efforts"`  // time and gas of each step that moves or pushes something
	Total    []Effort  `json:"total"`    // of the whole: the time first, then the gas of each run
	Contents []Content `json:"contents"` // what stands in each stretch after each flush and at the end
}

type play struct {
	*Model
	at  int
	out *Outcome
}

// Play plays the steps on the line, which it changes. The error lists every step that cannot be read: an item that is not
// on the sheet, a word that is no action, a quantity without unit.
func (m *Model) Play(steps []Step) (*Outcome, error) {
	p := &play{Model: m, out: &Outcome{[]Fault{}, []string{}, []Effort{}, []Effort{}, []Content{}}}
	var bad []string
	for i, s := range steps {
		p.at = i + 1
		before := p.pressures()
		if err := p.step(s); err != nil {
			where := fmt.Sprintf("step %d", p.at)
			if s.line > 0 {
				where += fmt.Sprintf(" (line %d)", s.line)
			}
			bad = append(bad, where+": "+err.Error())
		}
		p.raised(before)
	}
	if len(bad) > 0 {
		return nil, fmt.Errorf("%s", strings.Join(bad, "\n"))
	}
	p.at = len(steps) + 1
	p.end()
	p.total()
	return p.out, nil
}

func (p *play) step(s Step) error {
	if err := p.keyed(s); err != nil {
		return err
	}
	switch s.Do {
	case "check":
		return nil
	case "bond":
		return p.bond(s)
	case "connect", "disconnect":
		return p.join(s)
	case "open", "close", "set":
		return p.turn(s)
	case "start", "stop":
		return p.pump(s)
	case "transfer":
		return p.transfer(s)
	case "flush":
		return p.rinse(s)
	case "vent", "drain":
		return p.empty(s)
	}
	return nil
}

// open notes, once, what is not known.
func (p *play) open(says string) {
	if !slices.Contains(p.out.Open, says) {
		p.out.Open = append(p.out.Open, says)
	}
}

func (p *play) bond(s Step) error {
	v := p.vessels[s.Item]
	if v == nil {
		return p.unknown(s, "a vessel", p.vesselNames())
	}
	v.bonded = true
	return nil
}

func (p *play) vesselNames() (names []string) {
	for _, v := range p.line.Vessels {
		names = append(names, v.Key)
	}
	return names
}

func (p *play) unknown(s Step, what string, names []string) error {
	return fmt.Errorf("%s: %q is not %s of this sheet: use one of %s", s.Do, s.Item, what, strings.Join(names, ", "))
}

// device finds a valve, regulator or source valve; the run is wanted where several runs have a source.
func (p *play) device(s Step, kinds ...string) (*run, int, error) {
	var names []string
	var found *run
	at, n := 0, 0
	for _, r := range p.runs {
		for i, d := range r.devices {
			if !slices.Contains(kinds, d.kind) {
				continue
			}
			names = append(names, d.id)
			if d.id == s.Item && (s.Run == "" || s.Run == r.key) {
				found, at, n = r, i, n+1
			}
		}
	}
	switch {
	case n > 1:
		return nil, 0, fmt.Errorf("%s: several runs have a %s: say which one under the key run", s.Do, s.Item)
	case n == 0:
		slices.Sort(names)
		return nil, 0, p.unknown(s, "a "+strings.Join(kinds, " or ")+" that can be turned", slices.Compact(names))
	}
	return found, at, nil
}

// place finds the cell a part stands in; a device stands for the cell behind it.
func (p *play) place(id string) (*run, int, bool) {
	for _, r := range p.runs {
		for i, c := range r.cells {
			for _, part := range c.parts {
				if part.ID == id {
					return r, i, true
				}
			}
			if i > 0 && r.devices[i-1].id == id && id != "source" {
				return r, i, true
			}
		}
	}
	return nil, 0, false
}
