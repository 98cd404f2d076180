package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/types"
)

// unitSuffixes are the units of the facts; _count is a bare number of things.
var unitSuffixes = []string{"_kpa", "_ck", "_mm", "_days", "_day", "_permille", "_ohm", "_count", "_mmps", "_mm2ps", "_ms", "_n", "_minutes", "_um", "_mlps", "_kpac"}

// typed compiles everything against the schema, and checks what the compiler knows of the values in the reports.
func typed(modules []Module) []Problem { return typedBy(compile, modules) }

func typedBy(compile func([]Module, bool) (*ast.Compiler, error), modules []Module) []Problem {
	c, err := compile(modules, true)
	if err != nil {
		return located("", err)
	}
	var out []Problem
	for _, m := range modules {
		id, ok := m.id()
		if !ok {
			continue
		}
		ref := refOf(id).Append(ast.StringTerm("report"))
		for _, text := range values(c.TypeEnv.GetByRef(ref)) {
			out = append(out, Problem{m.Path, 0, text})
		}
	}
	return out
}

// values says what is wrong with the values of a report.
func values(t types.Type) []string {
	set, ok := t.(*types.Set)
	if !ok {
		return nil // layout has said it
	}
	var out []string
	for _, o := range alternatives(set.Of()) {
		for _, p := range o.StaticProperties() {
			if text := value(p.Key.(string), p.Value); text != "" && !slices.Contains(out, text) {
				out = append(out, text)
			}
		}
	}
	return out
}

func alternatives(t types.Type) []*types.Object {
	switch t := t.(type) {
	case *types.Object:
		return []*types.Object{t}
	case types.Any:
		var out []*types.Object
		for _, x := range t {
			out = append(out, alternatives(x)...)
		}
		return out
	}
	return nil
}

func value(key string, t types.Type) string {
	unit := slices.ContainsFunc(unitSuffixes, func(s string) bool { return strings.HasSuffix(key, s) })
	switch t.(type) {
	case types.Number:
		if !unit {
			return key + " is a number: end its name in " + strings.Join(unitSuffixes, " ")
		}
	case types.String:
		if unit {
			return key + " is a word: a name that ends like a unit is for numbers"
		}
	case types.Any: // the result of a function: nothing is known until it runs
	default:
		return key + " is neither a number nor a word: a report holds only these"
	}
	return ""
}
