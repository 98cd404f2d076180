package decide

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Finding is one thing a rule says.
type Finding struct {
	Rule    string            // area/fault
	Subject string            // id of what was judged
	Part    string            // may be empty
	Case    string            // may be empty
	Numbers map[string]int64  // the unit is in the name: _kpa _ck _mm _days _day _permille _ohm _count
	Words   map[string]string // what else the message takes
}

// findings reads the answer of the engine: area, fault, then a set of reports.
func (e *Engine) findings(areas ast.Object) ([]Finding, error) {
	out := []Finding{}
	err := eachKey(areas, func(area string, v ast.Value) error {
		faults, ok := v.(ast.Object)
		if !ok {
			return fmt.Errorf("%s is %v", area, v)
		}
		return eachKey(faults, func(fault string, v ast.Value) error {
			list, err := e.reports(area+"/"+fault, ast.NewTerm(v))
			out = append(out, list...)
			return err
		})
	})
	if err != nil {
		return nil, fmt.Errorf("decide: the rules gave no proper findings: %w", err)
	}
	slices.SortStableFunc(out, e.compare)
	return out, nil
}

// reports reads the findings of one rule, in the engine's own order.
func (e *Engine) reports(id string, v *ast.Term) ([]Finding, error) {
	if e.rules[id] == nil {
		return nil, fmt.Errorf("there is no rule %s", id)
	}
	if v == nil {
		return nil, fmt.Errorf("%s gave nothing, not even that it found nothing", id)
	}
	set, ok := v.Value.(ast.Set)
	if !ok {
		return nil, fmt.Errorf("%s gave %v, not a set", id, v)
	}
	var out []Finding
	for _, t := range set.Slice() {
		f, err := finding(id, t.Value)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", id, err)
		}
		out = append(out, f)
	}
	return out, nil
}

func finding(id string, v ast.Value) (Finding, error) {
	f := Finding{Rule: id, Numbers: map[string]int64{}, Words: map[string]string{}}
	o, ok := v.(ast.Object)
	if !ok {
		return f, fmt.Errorf("%v is not an object", v)
	}
	if err := eachKey(o, f.put); err != nil {
		return f, err
	}
	if f.Subject == "" {
		return f, fmt.Errorf("%v names no subject", v)
	}
	return f, nil
}

// put files one key of a report.
func (f *Finding) put(key string, v ast.Value) error {
	switch v := v.(type) {
	case ast.String:
		switch key {
		case "subject":
			f.Subject = string(v)
		case "part":
			f.Part = string(v)
		case "case":
			f.Case = string(v)
		default:
			f.Words[key] = string(v)
		}
		return nil
	case ast.Number:
		n, err := strconv.ParseInt(string(v), 10, 64)
		f.Numbers[key] = n
		if err == nil && key != "subject" && key != "part" && key != "case" {
			return nil
		}
	}
	return fmt.Errorf("%s is %v: want a word, or a whole number of 64 bits", key, v)
}

// eachKey visits an object whose keys are words, in their order.
func eachKey(o ast.Object, visit func(string, ast.Value) error) error {
	return o.Iter(func(k, v *ast.Term) error {
		key, ok := k.Value.(ast.String)
		if !ok {
			return fmt.Errorf("key %v is not a word", k)
		}
		return visit(string(key), v.Value)
	})
}

func (e *Engine) compare(a, b Finding) int {
	return cmp.Or(
		cmp.Compare(e.rules[a.Rule].rank, e.rules[b.Rule].rank), cmp.Compare(a.Rule, b.Rule),
		cmp.Compare(a.Part, b.Part), cmp.Compare(a.Subject, b.Subject), cmp.Compare(a.Case, b.Case),
	)
}
