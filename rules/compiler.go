package rules

import (
	"encoding/json"
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// Compiler compiles the rules for judging. It does not repeat the check against the schema of the facts, which costs
// start-up time: the digest in the index says that this very text has passed it.
func (s Set) Compiler() (*ast.Compiler, error) {
	return compile(s.modules, false)
}

// compile is strict and knows only the permitted built-ins. With checked, every fact a rule names must be in the schema.
func compile(modules []Module, checked bool) (*ast.Compiler, error) {
	parsed, err := parseAll(modules, checked)
	if err != nil {
		return nil, fmt.Errorf("rules: %w", err)
	}
	c := ast.NewCompiler().WithStrict(true).WithCapabilities(Capabilities())
	if checked {
		c = c.WithSchemas(schemas()).WithUseTypeCheckAnnotations(true)
	}
	if c.Compile(parsed); c.Failed() {
		return nil, fmt.Errorf("rules: %w", c.Errors)
	}
	return c, nil
}

// parseAll parses on all cores: it is half of what a cold start costs. Of several faults the first by path is reported.
func parseAll(modules []Module, annotations bool) (map[string]*ast.Module, error) {
	mods, errs := make([]*ast.Module, len(modules)), make([]error, len(modules))
	Capabilities()
	var wait sync.WaitGroup
	for w := range runtime.GOMAXPROCS(0) {
		wait.Go(func() {
			for i := w; i < len(modules); i += runtime.GOMAXPROCS(0) {
				mods[i], errs[i] = parse(modules[i], annotations)
			}
		})
	}
	wait.Wait()
	parsed := make(map[string]*ast.Module, len(modules))
	for i, m := range modules {
		if errs[i] != nil {
			return nil, errs[i]
		}
		parsed[m.Path] = mods[i]
	}
	return parsed, nil
}

func parse(m Module, annotations bool) (*ast.Module, error) {
	return ast.ParseModuleWithOpts(m.Path, m.Text, ast.ParserOptions{
		ProcessAnnotation: annotations, RegoVersion: ast.RegoV1, Capabilities: Capabilities(),
	})
}

func schemas() *ast.SchemaSet {
	var schema any
	if err := json.Unmarshal(facts.JSONSchema(), &schema); err != nil {
		panic(err) // our own output
	}
	set := ast.NewSchemaSet()
	set.Put(ast.MustParseRef("schema.facts"), schema)
	return set
}

// Capabilities are the built-ins a rule may use: none that reads a clock, a network, a random source, a secret or the
// machine, so that equal facts give equal findings.
// The list is made once; callers must not change it.
var Capabilities = sync.OnceValue(func() *ast.Capabilities {
	c := ast.CapabilitiesForThisVersion()
	c.Builtins = slices.DeleteFunc(c.Builtins, func(b *ast.Builtin) bool { return barred(b) })
	c.Features = slices.DeleteFunc(c.Features, func(f string) bool { return strings.HasPrefix(f, "rego_v2") })
	c.AllowNet = []string{}
	return c
})

// barredNames are single built-ins and whole families (with a dot at the end).
var barredNames = []string{
	"net.", "crypto.", "io.jwt.", "graphql.", "providers.", "opa.", "trace", "print", "rego.metadata.",
	"rego.parse_module", "http.",
}

func barred(b *ast.Builtin) bool {
	return b.IsNondeterministic() || slices.ContainsFunc(barredNames, func(name string) bool {
		return b.Name == name || strings.HasSuffix(name, ".") && strings.HasPrefix(b.Name, name)
	})
}
