package rules

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Site is what a site judges its lines by beyond the rules of the program: rules of its own, and limits for these.
//
// Its rules live apart: they are compiled by themselves, so that they can neither read nor touch another rule, and all
// they can do is find more.
type Site struct {
	modules []Module // their paths begin with site/
	limits  map[string]int64
	base    string // digest of the rules of the program alone
}

// SiteError is everything that is wrong with the rules or limits of a site. None of them judges anything then.
type SiteError struct{ Problems []Problem }

func (e *SiteError) Error() string {
	var lines []string
	for _, p := range e.Problems {
		lines = append(lines, p.String())
	}
	return strings.Join(lines, "\n")
}

// WithSite adds the rules and limits of a folder: AREA/FAULT/rule.rego and limits.yaml. Their ids begin with site/. The
// error is a SiteError, or that the folder cannot be read.
func (s Set) WithSite(dir string) (Set, error) {
	if _, err := os.Stat(dir); err != nil {
		return Set{}, fmt.Errorf("rules of the site: %w", err)
	}
	site := &Site{base: s.digest}
	problems, err := site.read(os.DirFS(dir))
	if err != nil {
		return Set{}, fmt.Errorf("rules of the site: %w", err)
	}
	found, more := site.check()
	if problems = append(problems, more...); len(problems) > 0 {
		for i := range problems {
			problems[i].Path = filepath.Join(dir, filepath.FromSlash(strings.TrimPrefix(problems[i].Path, sitePrefix)))
		}
		return Set{}, &SiteError{problems}
	}
	s.site, s.digest = site, digest(append(slices.Clone(s.modules), append(site.modules, site.limitsModule())...))
	s.rules = append(slices.Clone(s.rules), found...)
	slices.SortFunc(s.rules, func(a, b Rule) int { return cmp.Compare(a.ID, b.ID) })
	return s, nil
}

// Site is the site's own part of the set, nil if there is none.
func (s Set) Site() *Site { return s.site }

// OfSite says whether a rule is one of the site's own.
func (r Rule) OfSite() bool { return strings.HasPrefix(r.ID, sitePrefix) }

const sitePrefix = "site/"

func (l *lint) ofSite() bool { return strings.HasPrefix(l.id, sitePrefix) }

// refOf is where a rule stands in the engine: data.rules.AREA.FAULT, or data.site.AREA.FAULT.
func refOf(id string) ast.Ref {
	out := ast.Ref{ast.DefaultRootDocument}
	if !strings.HasPrefix(id, sitePrefix) {
		out = append(out, ast.StringTerm("rules"))
	}
	for part := range strings.SplitSeq(id, "/") {
		out = append(out, ast.StringTerm(part))
	}
	return out
}

// read takes in what is in the folder. A file that would never be run is a fault: somebody believes in it.
func (s *Site) read(fsys fs.FS) ([]Problem, error) {
	var out []Problem
	err := fs.WalkDir(fsys, ".", func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && strings.HasPrefix(d.Name(), ".") && path != ".":
			return fs.SkipDir
		case d.IsDir() || !strings.EqualFold(filepath.Ext(path), ".rego") || strings.HasSuffix(path, "_test.rego"):
			return nil
		case strings.HasPrefix(path, "limits/"):
			out = append(out, Problem{path, 0, "limits is the name of the limits: choose another area"})
			return nil
		case !sitePath.MatchString(path):
			out = append(out, Problem{path, 0, "is never run: put a rule in AREA/FAULT/rule.rego, in lower case with _ for spaces"})
			return nil
		}
		text, err := fs.ReadFile(fsys, path)
		s.modules = append(s.modules, Module{sitePrefix + path, string(text)})
		return err
	})
	if err != nil {
		return nil, err
	}
	text, err := fs.ReadFile(fsys, limitsFile)
	if errors.Is(err, fs.ErrNotExist) {
		text, err = nil, nil
	}
	if err != nil {
		return nil, err
	}
	out = append(out, s.readLimits(text)...)
	if len(s.modules) == 0 && len(out) == 0 {
		out = append(out, Problem{".", 0, "holds neither AREA/FAULT/rule.rego nor " + limitsFile})
	}
	return out, nil
}

// check holds the rules to what those of the program are held to, with the leeway of a site.
func (s *Site) check() ([]Rule, []Problem) {
	var out []Problem
	var found []Rule
	for _, l := range inspect(s.modules) {
		if l.mod != nil {
			s.limited(l)
		}
		out, found = append(out, l.out...), append(found, l.rule)
	}
	out = append(out, typedBy(s.compile, s.modules)...)
	slices.SortFunc(out, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.Path, b.Path), cmp.Compare(a.Row, b.Row), cmp.Compare(a.Text, b.Text))
	})
	return found, slices.Compact(out)
}
