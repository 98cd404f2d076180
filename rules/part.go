package rules

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// CompilerOf compiles only the named rules, for a line on which no other can find anything. Rules read nothing of each
// other, so they judge as they would among all.
func (s Set) CompilerOf(ids []string) (*ast.Compiler, error) {
	var part []Module
	for _, m := range s.modules {
		if id, ok := m.id(); ok && slices.Contains(ids, id) {
			part = append(part, m)
		}
	}
	return compile(part, false)
}
