package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Compiler compiles the rules of the site alone.
func (s *Site) Compiler() (*ast.Compiler, error) { return s.compile(s.modules, false) }

func (s *Site) compile(modules []Module, checked bool) (*ast.Compiler, error) {
	parsed, err := parseAll(modules, checked)
	if err != nil {
		return nil, err
	}
	c := ast.NewCompiler().WithStrict(true).WithCapabilities(siteCapabilities())
	if checked {
		c = c.WithSchemas(schemas()).WithUseTypeCheckAnnotations(true)
	}
	if c.Compile(parsed); c.Failed() {
		return nil, c.Errors
	}
	return c, nil
}

// greedy are built-ins that can take all memory before anybody can stop them.
var greedy = []string{"bits.lsh", "numbers.range", "numbers.range_step", "graph.", "walk", "regex.globs_match", "strings.render_template"}

// siteCapabilities are those of the other rules without the greedy ones.
func siteCapabilities() *ast.Capabilities {
	c := *Capabilities()
	c.Builtins = slices.DeleteFunc(slices.Clone(c.Builtins), func(b *ast.Builtin) bool {
		return slices.ContainsFunc(greedy, func(name string) bool {
			return b.Name == name || strings.HasSuffix(name, ".") && strings.HasPrefix(b.Name, name)
		})
	})
	return &c
}
