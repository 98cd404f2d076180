package rules

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Problem is one thing wrong with a rule: where, and what to do about it.
type Problem struct {
	Path string
	Row  int // from 1; 0 for the whole file
	Text string
}

func (p Problem) String() string {
	if p.Row == 0 {
		return p.Path + ": " + p.Text
	}
	return fmt.Sprintf("%s:%d: %s", p.Path, p.Row, p.Text)
}

// lint is the work on one rule.
type lint struct {
	Module
	id     string
	mod    *ast.Module
	rule   Rule
	absent []string // facts whose absence the rule decides on
	read   []string // paths of the facts it reads, sorted
	out    []Problem
}

func (l *lint) add(row int, format string, args ...any) {
	l.out = append(l.out, Problem{l.Path, row, fmt.Sprintf(format, args...)})
}

// Lint says everything that is wrong with the rules of a folder. The error is that it cannot be read at all.
func Lint(fsys fs.FS) ([]Problem, error) {
	modules, err := read(fsys)
	if err != nil {
		return nil, err
	}
	return problems(modules), nil
}

func problems(modules []Module) []Problem {
	var out []Problem
	for _, l := range inspect(modules) {
		out = append(out, l.out...)
	}
	out = append(out, typed(modules)...)
	slices.SortFunc(out, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.Path, b.Path), cmp.Compare(a.Row, b.Row), cmp.Compare(a.Text, b.Text))
	})
	return slices.Compact(out) // what cannot be parsed cannot be compiled either, and both say so
}

// inspect looks at every rule by itself, sorted by id.
func inspect(modules []Module) []*lint {
	var out []*lint
	for _, m := range modules {
		if id, ok := m.id(); ok {
			l := &lint{Module: m, id: id, rule: Rule{ID: id}}
			l.all()
			out = append(out, l)
		}
	}
	return out
}

// described is the index of the modules, as far as they can be read.
func described(modules []Module) index {
	x := index{Digest: digest(modules)}
	for _, l := range inspect(modules) {
		x.Rules = append(x.Rules, l.rule)
	}
	return x
}

// all runs every check that needs the one file only.
func (l *lint) all() {
	l.text()
	mod, err := parse(l.Module, true)
	if err != nil {
		l.out = append(l.out, located(l.Path, err)...)
		return
	}
	l.mod = mod
	for _, check := range []func(){l.metadata, l.layout, l.calls, l.loops, l.message, l.reads} {
		check()
	}
}

// located turns the engine's errors into problems.
func located(path string, err error) []Problem {
	var list ast.Errors
	if !errors.As(err, &list) {
		return []Problem{{path, 0, err.Error()}}
	}
	var out []Problem
	for _, e := range list {
		p := Problem{Path: path, Text: e.Message}
		if e.Location != nil {
			p.Path, p.Row = cmp.Or(e.Location.File, path), e.Location.Row
		}
		if e.Details != nil {
			for _, line := range e.Details.Lines() {
				p.Text += "\n\t" + line
			}
		}
		out = append(out, p)
	}
	return out
}
