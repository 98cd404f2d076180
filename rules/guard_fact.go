package rules

import (
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"lineworthy/check/facts"
)

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
	known := slices.Contains(facts.Collections(), parts[0]) && parts[0] != "line" && (parts[0] == "pairs") == (len(parts) == 2)
	return strings.Join(parts, "."), known
}

// groups reads input.pairs[group], where group is one of some words.
func (s state) groups(t *ast.Term) []string {
	r, ok := t.Value.(ast.Ref)
	if !ok || len(r) != 3 {
		return nil
	}
	if name, ok := collectionOf(r); !ok || name != "pairs" {
		return nil
	}
	v, _ := r[2].Value.(ast.Var)
	return s.among[v]
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

// factOf says which fact of which loop a term is.
func (s state) factOf(t *ast.Term) (place, bool) {
	if v, ok := t.Value.(ast.Var); ok {
		if p, ok := s.fact[v]; ok {
			return p, true
		}
		if g := s.given[v]; g != nil {
			if _, again := g.Value.(ast.Var); !again {
				return s.factOf(g)
			}
		}
		return place{}, false
	}
	r, ok := t.Value.(ast.Ref)
	if !ok || len(r) < 2 {
		return place{}, false
	}
	loop, collection := 0, "line"
	if v, isVar := r[0].Value.(ast.Var); isVar && len(r) == 2 {
		at, runs := s.loop[v]
		if !runs {
			return place{}, false
		}
		loop = at
		collection, _, _ = strings.Cut(s.body[at].Over, ".")
	} else if name, ok := collectionOf(r); !ok || name != "line" || len(r) != 3 {
		return place{}, false
	}
	key, ok := r[len(r)-1].Value.(ast.String)
	if !ok {
		return place{}, false
	}
	f, ok := facts.Find(collection, string(key))
	return place{loop, f}, ok
}

func key(f facts.Fact) string {
	_, k, _ := strings.Cut(f.Path, ".")
	return k
}
