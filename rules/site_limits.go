package rules

import (
	"embed"
	"fmt"
	"io/fs"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"gopkg.in/yaml.v3"
)

const limitsFile = "limits.yaml"

// sitePath is where a rule of a site stands.
var sitePath = regexp.MustCompile(`^[a-z][a-z0-9_]*/[a-z][a-z0-9_]*/rule\.rego$`)

// limitsRef is where the limits stand in the engine.
var limitsRef = ast.MustParseRef("data.site.limits")

// general are rules that any site can use by naming their limit, without writing any.
//
//go:embed site/*/*/rule.rego
var general embed.FS

// Limits are the site's limits by name. The caller must not change them.
func (s *Site) Limits() map[string]int64 { return s.limits }

// readLimits takes in the limits, and the general rule of each that no rule of the site reads.
func (s *Site) readLimits(text []byte) []Problem {
	var doc map[string]yaml.Node
	if err := yaml.Unmarshal(text, &doc); err != nil {
		return []Problem{{limitsFile, 0, "want lines like pressure_margin_permille: 100: " + err.Error()}}
	}
	s.limits = map[string]int64{}
	var out []Problem
	for _, name := range slices.Sorted(maps.Keys(doc)) {
		node := doc[name]
		n, err := strconv.ParseInt(node.Value, 10, 64)
		switch {
		case node.Kind != yaml.ScalarNode || node.Tag != "!!int" || err != nil:
			out = append(out, Problem{limitsFile, node.Line, name + " is no whole number"})
		case !slices.ContainsFunc(unitSuffixes, func(u string) bool { return strings.HasSuffix(name, u) }):
			out = append(out, Problem{limitsFile, node.Line, name + ": end its name in its unit, one of " + strings.Join(unitSuffixes, " ")})
		default:
			s.limits[name] = n
			out = append(out, s.reader(name, node.Line)...)
		}
	}
	return out
}

// reader sees to it that a limit is read by a rule: one that nobody reads protects nobody.
func (s *Site) reader(name string, row int) []Problem {
	for _, m := range s.modules {
		if reads(m, name) {
			return nil
		}
	}
	known, err := generalRules()
	if err != nil {
		return []Problem{{limitsFile, row, err.Error()}}
	}
	for _, m := range known {
		if reads(m, name) && !slices.ContainsFunc(s.modules, func(own Module) bool { return own.Path == m.Path }) {
			s.modules = append(s.modules, m)
			return nil
		}
	}
	return []Problem{{limitsFile, row, fmt.Sprintf("%s: no rule of the site reads it, and the general ones read only %s",
		name, strings.Join(generalLimits(known), ", "))}}
}

// generalRules are the general rules, sorted by path.
func generalRules() ([]Module, error) {
	paths, err := fs.Glob(general, "site/*/*/rule.rego")
	if err != nil {
		return nil, err
	}
	var out []Module
	for _, p := range paths {
		text, err := general.ReadFile(p)
		if err != nil {
			return nil, err
		}
		out = append(out, Module{p, string(text)})
	}
	return out, nil
}

var limitRead = regexp.MustCompile(`\bdata\.site\.limits\.([a-z0-9_]+)`)

func generalLimits(modules []Module) []string {
	var out []string
	for _, m := range modules {
		for _, found := range limitRead.FindAllStringSubmatch(m.Text, -1) {
			out = append(out, found[1])
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func reads(m Module, name string) bool { return slices.Contains(generalLimits([]Module{m}), name) }

// limited wants every limit that a rule reads to be set: without it the rule could never find anything.
func (s *Site) limited(l *lint) {
	refs(l.mod, func(r ast.Ref, row int) {
		if !r.HasPrefix(limitsRef) || len(r) <= len(limitsRef) {
			return
		}
		name, _ := r[len(limitsRef)].Value.(ast.String)
		if _, ok := s.limits[string(name)]; !ok {
			l.add(row, "%s is not in %s: the rule could never find anything", r, limitsFile)
		}
	})
}

// limitsModule stands for the limits in the digest.
func (s *Site) limitsModule() Module {
	var b strings.Builder
	for _, name := range slices.Sorted(maps.Keys(s.limits)) {
		fmt.Fprintf(&b, "%s: %d\n", name, s.limits[name])
	}
	return Module{sitePrefix + limitsFile, b.String()}
}

// Data is what the rules of a site can read beside input, as a stock engine wants it.
func (s *Site) Data() map[string]any {
	limits := map[string]any{}
	for name, n := range s.limits {
		limits[name] = n
	}
	return map[string]any{"site": map[string]any{"limits": limits}}
}
