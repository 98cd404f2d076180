package decide

import (
	"context"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
)

// program is some rules, compiled. It does not change.
type program struct {
	compiler *ast.Compiler
	has      map[int]bool // places of its rules
	store    storage.Store
	read     storage.Transaction // nothing ever writes
}

// share is what one program is asked about a line.
type share struct {
	program *program
	asks    []ask
}

// mostPrograms is how many there are before they are made into one.
const mostPrograms = 12

// shares gives every question to a program that has its rule. What none has is compiled: of all rules, few are ever needed.
func (e *Engine) shares(asks []ask) ([]share, error) {
	out, rest := e.shared(asks)
	if len(rest) == 0 {
		return out, nil
	}
	e.grow.Lock()
	defer e.grow.Unlock()
	if out, rest = e.shared(asks); len(rest) == 0 {
		return out, nil
	}
	if err := e.add(rest); err != nil {
		return nil, err
	}
	out, _ = e.shared(asks)
	return out, nil
}

// shared is shares as far as the rules are compiled, and the rest.
func (e *Engine) shared(asks []ask) (out []share, rest []ask) {
	rest = asks
	for _, p := range *e.compiled.Load() {
		var own, others []ask
		for _, a := range rest {
			if p.has[a.rule] {
				own = append(own, a)
			} else {
				others = append(others, a)
			}
		}
		if len(own) > 0 {
			out, rest = append(out, share{p, own}), others
		}
		if len(rest) == 0 {
			break
		}
	}
	return out, rest
}

// add compiles the rules of some questions, or, when there are many programs, those of all in one.
func (e *Engine) add(asks []ask) error {
	has, old := map[int]bool{}, *e.compiled.Load()
	for _, a := range asks {
		has[a.rule] = true
	}
	if len(old) >= mostPrograms {
		for _, p := range old {
			for i := range p.has {
				has[i] = true
			}
		}
		old = nil
	}
	var ids []string
	for i, id := range e.order {
		if has[i] {
			ids = append(ids, id)
		}
	}
	c, err := e.compile(ids)
	if err != nil {
		return err
	}
	p, err := newProgram(c, map[string]any{})
	if err != nil {
		return err
	}
	p.has = has
	programs := append(old[:len(old):len(old)], p)
	e.compiled.Store(&programs)
	return nil
}

func newProgram(c *ast.Compiler, data map[string]any) (*program, error) {
	p := &program{compiler: c, store: inmem.NewFromObject(data)}
	var err error
	if p.read, err = p.store.NewTransaction(context.Background()); err != nil {
		return nil, fmt.Errorf("decide: %w", err)
	}
	return p, nil
}

// everyRule is the query that a stock engine is asked, and the program for it.
func (e *Engine) everyRule() (*program, ast.Body, error) {
	c, err := e.compile(nil)
	if err != nil {
		return nil, nil, err
	}
	query, err := c.QueryCompiler().Compile(ast.MustParseBody("found = data.verdict.findings"))
	if err != nil {
		return nil, nil, fmt.Errorf("decide: %w", err)
	}
	p, err := newProgram(c, map[string]any{})
	return p, query, err
}

// question is the query for one rule: an equation that needs no compiling, and the variable that it binds.
type question struct {
	expr *ast.Expr
	out  ast.Var
}

func questionOf(i int, id string) question {
	v := ast.Var(fmt.Sprintf("found%d", i))
	return question{ast.Equality.Expr(ast.NewTerm(v), ast.NewTerm(refOf(id))), v}
}
