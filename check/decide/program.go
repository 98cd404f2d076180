package decide

import (
	"context"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
)

// program is what is compiled. It does not change.
type program struct {
	compiler *ast.Compiler
	has      map[string]bool // rules by id; nil for all
	all      ast.Body        // the query for everything, if all rules are there
	ask      []*ast.Expr     // the query for one rule, in the order of the index
	out      []ast.Var       // the variable that it binds
	store    storage.Store
	read     storage.Transaction // nothing ever writes
}

// program gives a program with the rules that are asked, or with all when there are none. The first line gets what it needs; once a
// second one needs more, everything is compiled.
func (e *Engine) program(asks []ask) (*program, error) {
	if p := e.compiled.Load(); p.covers(e.order, asks) {
		return p, nil
	}
	e.grow.Lock()
	defer e.grow.Unlock()
	p := e.compiled.Load()
	if p.covers(e.order, asks) {
		return p, nil
	}
	var ids []string
	if p == nil {
		for _, a := range asks {
			ids = append(ids, e.order[a.rule])
		}
	}
	c, err := e.compile(ids)
	if err != nil {
		return nil, err
	}
	if p, err = prepare(c, ids, e.order); err != nil {
		return nil, err
	}
	e.compiled.Store(p)
	return p, nil
}

func (p *program) covers(order []string, asks []ask) bool {
	if p == nil || p.has == nil {
		return p != nil
	}
	for _, a := range asks {
		if !p.has[order[a.rule]] {
			return false
		}
	}
	return asks != nil
}

// prepare makes the queries. That for one rule is an equation that needs no compiling.
func prepare(c *ast.Compiler, ids, order []string) (*program, error) {
	p := &program{compiler: c, store: inmem.New()}
	for i, id := range order {
		v := ast.Var(fmt.Sprintf("found%d", i))
		p.ask, p.out = append(p.ask, ast.Equality.Expr(ast.NewTerm(v), ast.NewTerm(refOf(id)))), append(p.out, v)
	}
	var err error
	if p.read, err = p.store.NewTransaction(context.Background()); err != nil {
		return nil, fmt.Errorf("decide: %w", err)
	}
	if ids != nil {
		p.has = map[string]bool{}
		for _, id := range ids {
			p.has[id] = true
		}
		return p, nil
	}
	if p.all, err = c.QueryCompiler().Compile(ast.MustParseBody("found = data.verdict.findings")); err != nil {
		return nil, fmt.Errorf("decide: %w", err)
	}
	return p, nil
}
