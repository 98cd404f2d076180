package rules

import (
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestCompile compiles all rules strictly against the schema of the facts.
func TestCompile(t *testing.T) {
	modules, err := read(here)
	require.NoError(t, err)
	_, err = compile(modules, true)
	require.NoError(t, err)
}

// TestMisspeltFactDoesNotCompile, and the trap beside it: without the schema the same rule compiles, and would never find
// anything.
func TestMisspeltFactDoesNotCompile(t *testing.T) {
	bad := []Module{{soundPath, strings.Replace(sound, "h.rated_kpa < _least", "h.rated_kap < _least", 1)}}
	_, err := compile(bad, true)
	require.ErrorContains(t, err, "undefined ref: h.rated_kap")
	require.ErrorContains(t, err, "rated_kpa", "the error names what there is")
	_, err = compile(bad, false)
	require.NoError(t, err)
}

// TestAnnotationSwitch: the schema alone does nothing; the engine heeds annotations only when told to.
func TestAnnotationSwitch(t *testing.T) {
	bad := Module{soundPath, strings.Replace(sound, "h.rated_kpa < _least", "h.rated_kap < _least", 1)}
	for _, heeded := range []bool{false, true} {
		m, err := parse(bad, true)
		require.NoError(t, err)
		c := ast.NewCompiler().WithSchemas(schemas()).WithUseTypeCheckAnnotations(heeded)
		c.Compile(map[string]*ast.Module{soundPath: m})
		assert.Equal(t, heeded, c.Failed(), "heeded: %v", heeded)
	}
}

// TestCapabilities: a rule that reaches for the outside does not compile, and what rules live on stays.
func TestCapabilities(t *testing.T) {
	for _, call := range []string{
		"time.now_ns()", `http.send({"url": "http://x", "method": "get"})`, `rand.intn("x", 5)`, `uuid.rfc4122("x")`, "opa.runtime()",
		`net.lookup_ip_addr("x")`, `net.cidr_contains("10.0.0.0/8", "10.0.0.1")`, `crypto.sha256("x")`, `io.jwt.decode("x")`,
		`graphql.is_valid("x", "y")`, `trace("x")`, `rego.metadata.rule()`, `rego.parse_module("x", "y")`,
	} {
		_, err := compile([]Module{{soundPath, "package rules.a.b\n\nreport contains x if x := " + call}}, false)
		require.Error(t, err, call)
	}
	for _, call := range []string{"count([1])", `startswith("a", "b")`, `sprintf("%d", [1])`, "max([1, 2])", `concat(",", ["a"])`} {
		_, err := compile([]Module{{soundPath, "package rules.a.b\n\nreport contains x if x := " + call}}, false)
		require.NoError(t, err, call)
	}
	assert.Equal(t, []string{}, Capabilities().AllowNet, "no list means any host")
}

// TestNextLanguageIsRefused: the engines of our users may be older.
func TestNextLanguageIsRefused(t *testing.T) {
	_, err := compile([]Module{{soundPath, "package rules.a.b\n\nimport rego.v2\n\nreport contains 1"}}, false)
	require.ErrorContains(t, err, "rego.v2")
}

// TestStrict: an unused variable is a slip of the pen.
func TestStrict(t *testing.T) {
	_, err := compile([]Module{{soundPath, "package rules.a.b\n\nreport contains 1 if x := 2"}}, false)
	require.ErrorContains(t, err, "unused")
}
