package inspect

import (
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"lineworthy/check/units"
)

// entries are the readings of a list of the record by id, each of which must be one of the names.
func entries(nodes []*yaml.Node, names []string, keys ...string) (map[string]map[string]Reading, []error) {
	out, bad := map[string]map[string]Reading{}, []error(nil)
	for _, n := range nodes {
		id, line, rs, err := pairs(n)
		switch {
		case err != nil:
			bad = append(bad, err)
			continue
		case !slices.Contains(names, id) || out[id] != nil:
			bad = append(bad, fmt.Errorf("line %d: %q is given twice or is not on the list: use %s", line, id, strings.Join(names, ", ")))
			continue
		}
		out[id] = map[string]Reading{}
		for _, r := range rs {
			if !slices.Contains(keys, r.Key) {
				bad = append(bad, fmt.Errorf("line %d: no such reading as %q: use %s", r.line, r.Key, strings.Join(keys, ", ")))
			}
			r.Item = id
			out[id][r.Key] = r
		}
	}
	return out, bad
}

func (f *Filled) holds(nodes []*yaml.Node) []error {
	var names []string
	for _, h := range f.list.Holds {
		names = append(names, h.ID)
	}
	given, bad := entries(nodes, names, "passed")
	for _, h := range f.list.Holds {
		r := given[h.ID]["passed"]
		if r.Text == "" {
			f.Open = append(f.Open, "hold point "+h.ID+" was not passed yet: "+h.Text)
			continue
		}
		f.Readings = append(f.Readings, r)
		ok, err := yes(r.Text)
		if err != nil {
			bad = append(bad, fmt.Errorf("line %d: %w", r.line, err))
		} else if !ok {
			f.reject("hold point "+h.ID, "was not passed: "+h.Text, "Do not go on before it is passed.", practice)
		}
	}
	return bad
}

func (f *Filled) tests(nodes []*yaml.Node) []error {
	var names []string
	for _, t := range f.list.Tests {
		names = append(names, t.Run)
	}
	given, bad := entries(nodes, names, "pressure", "fluid", "leaks")
	for _, t := range f.list.Tests {
		for _, key := range []string{"pressure", "fluid", "leaks"} {
			r := given[t.Run][key]
			if r.Text == "" {
				f.Open = append(f.Open, "leak test of "+t.Run+": "+key+" was not recorded")
				continue
			}
			f.Readings = append(f.Readings, r)
			if err := f.tested(t, key, r.Text); err != nil {
				bad = append(bad, fmt.Errorf("line %d: %s of the leak test of %s: %w", r.line, key, t.Run, err))
			}
		}
	}
	return bad
}

func (f *Filled) tested(t LeakTest, key, text string) error {
	item := "leak test of " + t.Run
	switch key {
	case "leaks":
		leaks, err := yes(text)
		if leaks {
			f.reject(item, "it leaks", "Let the pressure off, mend the joint, and test again.", roadPipe)
		}
		return err
	case "fluid":
		return f.with(t, item, text)
	}
	if t.kpa == 0 {
		f.Open = append(f.Open, item+": none could be planned, for "+t.Why)
		return nil
	}
	return f.testPressure(t, item, text)
}

func (f *Filled) testPressure(t LeakTest, item, text string) error {
	p, _, err := units.ParseGauge(text)
	if err != nil {
		return err
	}
	kpa := int64(float64(p)/1000 + 0.5)
	switch {
	case t.most > 0 && kpa > t.most:
		f.reject(item, fmt.Sprintf("was made at %s, above the %s that the line may see", text, t.limitText), "Take out of use what was tested above its rating until its maker or a competent person clears it, and see that every relief device is tight.", practice)
	case kpa < t.kpa*99/100: // what a gauge of class 1 cannot tell apart
		f.Open = append(f.Open, fmt.Sprintf("%s: %s is below the planned %s", item, text, t.Pressure))
	}
	return nil
}
