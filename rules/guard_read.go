package rules

import (
	"maps"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// guardOf works out the guard of a rule from its text.
func guardOf(m *ast.Module) Guard {
	g := Guard{Reads: collectionsOf(m)}
	r := &guardReader{mod: m}
	for _, x := range m.Rules {
		if name, ok := x.Head.Ref()[0].Value.(ast.Var); !ok || name != "report" {
			continue
		}
		if x.Head.RuleKind() != ast.MultiValue || len(x.Head.Ref()) != 1 || x.Else != nil || x.Default {
			return Guard{Reads: g.Reads} // nothing is understood, so it always runs
		}
		for _, s := range r.body(newState(Body{{Over: "line"}}), x.Body, 0) {
			g.Bodies = append(g.Bodies, r.head(s, x).body)
		}
	}
	g.Alone = aloneOf(m, g)
	return g
}

// collectionsOf are the collections of facts that a rule reads, nil if that is not plain from its text.
func collectionsOf(m *ast.Module) []string {
	out, plain, inputs := []string{}, 0, 0
	for _, r := range m.Rules {
		ast.WalkTerms(r, func(t *ast.Term) bool {
			switch v := t.Value.(type) {
			case ast.Var:
				if v == "input" || v == "data" {
					inputs++
				}
			case ast.Ref:
				if name, ok := collectionOf(v); ok {
					plain++
					out = append(out, name)
				}
			}
			return false
		})
	}
	if plain != inputs || len(m.Imports) > 0 {
		return nil
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// collectionOf reads hoses of input.hoses[_].id.
func collectionOf(r ast.Ref) (string, bool) {
	if len(r) < 2 || !r[0].Equal(ast.InputRootDocument) {
		return "", false
	}
	s, ok := r[1].Value.(ast.String)
	return string(s), ok
}

// state is what is understood of one way in which a body can be true.
type state struct {
	body   Body
	loop   map[ast.Var]int       // variables that run over a collection, by the loop
	among  map[ast.Var][]string  // variables that are one of some words
	fact   map[ast.Var]place     // variables that are a fact
	given  map[ast.Var]*ast.Term // variables that are another term
	hidden map[ast.Var]bool      // all that the body declares: a rule of that name is not meant
}

// place is a fact of a loop.
type place struct {
	loop int
	facts.Fact
}

func newState(b Body) state {
	out := state{
		loop: map[ast.Var]int{}, among: map[ast.Var][]string{}, fact: map[ast.Var]place{}, given: map[ast.Var]*ast.Term{}, hidden: map[ast.Var]bool{},
	}
	return out.with(b)
}

// with is the same state with a copy of another body.
func (s state) with(b Body) state {
	s.body = make(Body, len(b))
	for i, l := range b {
		s.body[i] = Loop{l.Over, slices.Clone(l.Signs)}
	}
	return s
}

// clone shares nothing.
func (s state) clone() state {
	s.loop, s.among, s.fact = maps.Clone(s.loop), maps.Clone(s.among), maps.Clone(s.fact)
	s.given, s.hidden = maps.Clone(s.given), maps.Clone(s.hidden)
	return s.with(s.body)
}

func (s state) add(loop int, x Sign) { s.body[loop].Signs = append(s.body[loop].Signs, x) }

// guardReader is the work on one rule.
type guardReader struct{ mod *ast.Module }

const (
	mostWays  = 40 // in which a body may be true; what would make more is not looked into
	mostDepth = 4  // of functions that call functions
)

// body finds every way in which a body can be true. Whatever is not understood is taken for true.
func (r *guardReader) body(s state, b ast.Body, depth int) []state {
	ways := []state{s}
	for _, step := range []func(state, *ast.Expr, int) []state{r.binds, r.signs} {
		for _, e := range b {
			var next []state
			for _, w := range ways {
				next = append(next, step(w.clone(), e, depth)...)
			}
			if len(next) <= mostWays {
				ways = next
			}
		}
	}
	return ways
}

// named are the rules of a name, each with what follows its else.
func (r *guardReader) named(v ast.Var) []*ast.Rule {
	var out []*ast.Rule
	for _, x := range r.mod.Rules {
		if name, ok := x.Head.Ref()[0].Value.(ast.Var); !ok || name != v {
			continue
		}
		for e := x; e != nil; e = e.Else {
			if len(e.Head.Ref()) != 1 || e.Default {
				return nil
			}
			out = append(out, e)
		}
	}
	return out
}
