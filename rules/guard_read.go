package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

// guardOf works out the guard of a rule from its text.
func guardOf(m *ast.Module) Guard {
	g := Guard{Reads: collectionsOf(m)}
	for _, r := range m.Rules {
		if name, ok := r.Head.Ref()[0].Value.(ast.Var); !ok || name != "report" {
			continue
		}
		if r.Head.RuleKind() != ast.MultiValue || len(r.Head.Ref()) != 1 || r.Else != nil || r.Default {
			return Guard{Reads: g.Reads} // nothing is understood, so it always runs
		}
		g.Bodies = append(g.Bodies, readBody(m, r).out)
	}
	g.Alone = aloneOf(m, g)
	return g
}

func readBody(m *ast.Module, r *ast.Rule) *bodyReader {
	b := &bodyReader{mod: m, out: Body{{Over: "line"}}, loop: map[ast.Var]int{}, among: map[ast.Var][]string{}, hidden: map[ast.Var]bool{}}
	for _, e := range r.Body {
		b.hide(e)
		b.loops(e)
	}
	for _, e := range r.Body {
		b.expr(e)
	}
	b.head(r)
	return b
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

// bodyReader is the work on one body.
type bodyReader struct {
	mod    *ast.Module
	out    Body
	loop   map[ast.Var]int      // variable to the loop that runs it over a collection
	among  map[ast.Var][]string // variable to the words that it runs over
	hidden map[ast.Var]bool     // names that the body gives a value of its own
}

// loops notes the variables that some ... in runs over a collection or over plain words.
func (b *bodyReader) loops(e *ast.Expr) {
	d, ok := e.Terms.(*ast.SomeDecl)
	if !ok || len(e.With) > 0 || len(d.Symbols) != 1 {
		return
	}
	c, ok := d.Symbols[0].Value.(ast.Call)
	if !ok || len(c) != 3 {
		return
	}
	v, ok := c[1].Value.(ast.Var)
	if !ok {
		return
	}
	if over, ok := collectionRef(c[2]); ok {
		b.loop[v] = len(b.out)
		b.out = append(b.out, Loop{Over: over})
	} else if words, ok := wordsOf(c[2]); ok {
		b.among[v] = words
	}
}

// hide notes the names that a statement declares.
func (b *bodyReader) hide(e *ast.Expr) {
	var declared []*ast.Term
	if d, ok := e.Terms.(*ast.SomeDecl); ok {
		declared = d.Symbols
	} else if e.IsCall() && e.Operator().String() == "assign" {
		declared = e.Operands()[:1]
	}
	for _, t := range declared {
		ast.WalkVars(t, func(v ast.Var) bool { b.hidden[v] = true; return false })
	}
}

// collectionRef reads input.hoses or input.pairs.limited.
func collectionRef(t *ast.Term) (string, bool) {
	r, ok := t.Value.(ast.Ref)
	if !ok || !r[0].Equal(ast.InputRootDocument) || len(r) < 2 || len(r) > 3 {
		return "", false
	}
	var parts []string
	for _, x := range r[1:] {
		s, ok := x.Value.(ast.String)
		if !ok {
			return "", false
		}
		parts = append(parts, string(s))
	}
	name := strings.Join(parts, ".")
	known := slices.Contains(facts.Collections(), parts[0]) && parts[0] != "line" && (parts[0] == "pairs") == (len(parts) == 2)
	return name, known
}

// fact says which fact of which loop a term reads.
func (b *bodyReader) fact(t *ast.Term) (loop int, f facts.Fact, ok bool) {
	r, isRef := t.Value.(ast.Ref)
	if !isRef || len(r) < 2 {
		return 0, f, false
	}
	key, collection := r[len(r)-1], ""
	v, isVar := r[0].Value.(ast.Var)
	if at, is := b.loop[v]; isVar && is && len(r) == 2 {
		loop, collection = at, b.out[at].Over
	} else if r[0].Equal(ast.InputRootDocument) && len(r) == 3 && r[1].Equal(ast.StringTerm("line")) {
		collection = "line"
	} else {
		return 0, f, false
	}
	collection, _, _ = strings.Cut(collection, ".")
	s, ok := key.Value.(ast.String)
	if !ok {
		return 0, f, false
	}
	f, ok = facts.Find(collection, string(s))
	return loop, f, ok
}

func key(f facts.Fact) string {
	_, k, _ := strings.Cut(f.Path, ".")
	return k
}

// wordsOf are the elements of a set or list of plain words.
func wordsOf(t *ast.Term) ([]string, bool) {
	var out []string
	switch t.Value.(type) {
	case ast.Set, *ast.Array:
		for _, x := range elements(t) {
			s, ok := x.Value.(ast.String)
			if !ok {
				return nil, false
			}
			out = append(out, string(s))
		}
	}
	slices.Sort(out)
	return out, len(out) > 0
}
