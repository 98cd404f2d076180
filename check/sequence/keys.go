package sequence

import (
	"fmt"
	"slices"
	"strings"
)

// takes are the keys of each action beside slowly and text, which are for all.
var takes = map[string][]string{
	"check": {"run", "item"}, "bond": {"item"}, "connect": {"run", "item"}, "disconnect": {"run", "item"},
	"open": {"run", "item"}, "close": {"run", "item"}, "set": {"run", "item", "pressure"}, "start": {"run", "item"}, "stop": {"run", "item"},
	"transfer": {"run", "quantity"}, "drain": {"run", "item"}, "vent": {"run", "item", "to"}, "flush": {"run", "item", "quantity", "fluid", "to"},
}

// keyed refuses a key that would be passed over: its writer means something by it.
func (p *play) keyed(s Step) error {
	known, ok := takes[s.Do]
	if !ok {
		return fmt.Errorf("do: %s is no action: use one of %s", s.Do, strings.Join(Actions(), ", "))
	}
	for _, k := range [][2]string{{"run", s.Run}, {"item", s.Item}, {"pressure", s.Pressure}, {"quantity", s.Quantity}, {"fluid", s.Fluid}, {"to", s.To}} {
		if k[1] != "" && !slices.Contains(known, k[0]) {
			return fmt.Errorf("%s: it takes no %s: use %s, slowly, text", s.Do, k[0], strings.Join(known, ", "))
		}
	}
	return p.ofRun(s)
}

// ofRun holds an item to the run that the step names.
func (p *play) ofRun(s Step) error {
	if s.Run == "" {
		return nil
	}
	var keys []string
	for _, r := range p.runs {
		keys = append(keys, r.key)
	}
	if !slices.Contains(keys, s.Run) {
		return fmt.Errorf("%s: the sheet has no run %q: use one of %s", s.Do, s.Run, strings.Join(keys, ", "))
	}
	for _, r := range p.line.Runs {
		for _, part := range r.Parts {
			if part.ID == s.Item && r.Key != s.Run {
				return fmt.Errorf("%s: %s stands in the run %s, not in %s", s.Do, s.Item, r.Key, s.Run)
			}
		}
	}
	return nil
}
