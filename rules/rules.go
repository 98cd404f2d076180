// Package rules holds the rules a line is judged by, each in the folder that is its name, and their index.
package rules

import (
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
)

// Tests do not match these patterns, so they are no part of the program.
//
//go:embed */*/rule.rego verdict/verdict.rego index.json
var files embed.FS

const (
	verdictFile = "verdict/verdict.rego"
	indexFile   = "index.json"
)

// Module is the text of one file of rules.
type Module struct {
	Path string
	Text string
}

// Set is a set of rules with their index. Its zero value has no rules.
type Set struct {
	modules []Module // sorted by path
	rules   []Rule   // sorted by id
	digest  string
	site    *Site // the site's own rules, nil for none
}

// Load gives the rules of the program. The error means that the program is broken: no verdict may be given.
func Load() (Set, error) { return Open(files) }

// Open reads a set of rules and checks it against its index: text that differs from what was linted and type-checked
// when the index was made is refused, because the checks are not repeated here.
func Open(fsys fs.FS) (Set, error) {
	modules, err := read(fsys)
	if err != nil {
		return Set{}, err
	}
	text, err := fs.ReadFile(fsys, indexFile)
	if err != nil {
		return Set{}, fmt.Errorf("rules: %w", err)
	}
	var x index
	if err := json.Unmarshal(text, &x); err != nil {
		return Set{}, fmt.Errorf("rules: %s: %w", indexFile, err)
	}
	s := Set{modules: modules, rules: x.Rules, digest: digest(modules)}
	return s, s.matches(x)
}

// read gives every rule and the file that gathers them, sorted by path.
func read(fsys fs.FS) ([]Module, error) {
	paths, err := fs.Glob(fsys, "*/*/rule.rego")
	if err != nil {
		return nil, fmt.Errorf("rules: %w", err)
	}
	paths = append(paths, verdictFile)
	slices.Sort(paths)
	out := make([]Module, len(paths))
	for i, p := range paths {
		text, err := fs.ReadFile(fsys, p)
		if err != nil {
			return nil, fmt.Errorf("rules: %w", err)
		}
		out[i] = Module{p, string(text)}
	}
	return out, nil
}

// id is the name of the rule in a module, and whether it holds one.
func (m Module) id() (string, bool) {
	return path.Dir(m.Path), strings.HasSuffix(m.Path, "/rule.rego")
}

// digest is the SHA-256 in hex of all paths and texts, each behind its length so that no two sets read alike.
func digest(modules []Module) string {
	h := sha256.New()
	for _, m := range modules {
		fmt.Fprintf(h, "%d %s %d\n%s", len(m.Path), m.Path, len(m.Text), m.Text)
	}
	return hex.EncodeToString(h.Sum(nil))
}
