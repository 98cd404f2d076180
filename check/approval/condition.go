package approval

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"lineworthy/check/report"
)

// Condition is one thing that has to be met or looked up before a line is used.
type Condition struct {
	Name string // rule id and subject, or the value to confirm
	Rule string // empty for a value to confirm
	Says string
}

// Conditions are those of the verdict, in its order, each name once.
func Conditions(v *report.Verdict) []Condition {
	var all []Condition
	for _, f := range v.Findings {
		if f.Severity == "condition" {
			all = add(all, Condition{f.Rule + " on " + f.Subject, f.Rule, f.Message})
		}
	}
	for _, c := range v.Confirm {
		all = add(all, Condition{c.What, "", "confirm it in: " + source(c)})
	}
	return all
}

func add(all []Condition, c Condition) []Condition {
	for i := range all {
		if all[i].Name != c.Name {
			continue
		}
		if !strings.Contains(all[i].Says, c.Says) {
			all[i].Says += "; " + c.Says
		}
		return all
	}
	return append(all, c)
}

func source(c report.Confirm) string {
	if c.Clause == "" {
		return c.Source
	}
	return c.Source + ", " + c.Clause
}

// Open are the conditions that nobody accepted, or whose acceptance has ended before the day (2006-01-02).
func Open(cs []Condition, accepted []Accepted, day string) []Condition {
	return slices.DeleteFunc(slices.Clone(cs), func(c Condition) bool {
		return slices.ContainsFunc(accepted, func(a Accepted) bool { return a.Condition == c.Name && a.Until >= day })
	})
}

// Match files what somebody accepts under the conditions of the verdict, in their order. A name is that of a condition,
// or a rule id alone for all conditions of that rule. Where it has what the condition says, that must still be so. The error
// names every one that fits nothing, comes twice or says something else.
func Match(cs []Condition, accepted []Accepted) ([]Accepted, error) {
	by := map[string]Accepted{}
	var faults []string
	for _, a := range accepted {
		n := 0
		for _, c := range cs {
			if c.Name != a.Condition && (c.Rule == "" || c.Rule != a.Condition) {
				continue
			}
			n++
			if a.Says != "" && a.Says != c.Says {
				faults = append(faults, fmt.Sprintf("%q is not what was accepted: the list has %q, and it says %q now", c.Name, a.Says, c.Says))
			}
			if _, twice := by[c.Name]; twice {
				faults = append(faults, fmt.Sprintf("%q is accepted twice", c.Name))
			}
			by[c.Name] = Accepted{c.Name, c.Says, a.Reason, a.Until}
		}
		if n == 0 {
			faults = append(faults, fmt.Sprintf("%q is no condition of this verdict", a.Condition))
		}
	}
	if faults != nil {
		return nil, errors.New(strings.Join(faults, "\n"))
	}
	var out []Accepted
	for _, c := range cs {
		if a, ok := by[c.Name]; ok {
			out = append(out, a)
		}
	}
	return out, nil
}
