package catalog

import (
	"io/fs"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Every built-in file keeps every promise that Lint knows.
func TestBuiltInCatalogIsSound(t *testing.T) {
	for _, fault := range Open().Lint() {
		t.Error(fault)
	}
}

func TestBuiltInCatalogIsThere(t *testing.T) {
	c := Open()
	for _, kind := range Kinds {
		assert.NotEmpty(t, c.IDs(kind), kind)
	}
}

// A document that neither a value nor a rule rests on misleads about what was used.
func TestBuiltInSourcesAreUsed(t *testing.T) {
	cited := citedByRules(t)
	coded := citedByCode(t)
	c := Open()
	for _, id := range c.UnusedSources() {
		if slices.Contains(coded, id) {
			continue
		}
		s, err := c.Source(id)
		require.NoError(t, err)
		stem, _, _ := strings.Cut(s.Document, ",") // rules cite a paragraph of it, e.g. 49 CFR 180.416, or all of it
		used := slices.ContainsFunc(cited, func(d string) bool { return strings.HasPrefix(d, stem) || strings.HasPrefix(stem, d) })
		if !used {
			t.Errorf("sources/%s.yaml: no value, no rule and no method rests on %q", id, s.Document)
		}
	}
}

// citedByRules returns the documents that rules name as their basis.
func citedByRules(t *testing.T) []string {
	return matches(t, "../rules", ".rego", regexp.MustCompile(`(?m)^# +- document: "?(.+?)"?$`))
}

// citedByCode returns the ids of sources that methods of the program name for figures of their own.
func citedByCode(t *testing.T) []string {
	return matches(t, "../check", ".go", regexp.MustCompile(`catalog\.Origin\{Source: "([a-z0-9-]+)"`))
}

// matches returns what the pattern finds in the files of a folder.
func matches(t *testing.T, folder, ending string, pattern *regexp.Regexp) (found []string) {
	t.Helper()
	err := fs.WalkDir(os.DirFS(folder), ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(path, ending) {
			return err
		}
		raw, err := os.ReadFile(folder + "/" + path)
		for _, m := range pattern.FindAllStringSubmatch(string(raw), -1) {
			found = append(found, m[1])
		}
		return err
	})
	require.NoError(t, err)
	return found
}
