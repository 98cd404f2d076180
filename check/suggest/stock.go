package suggest

import (
	"errors"
	"fmt"
	"os"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"lineworthy/catalog"
)

// Stock is what the site keeps. A nil Stock is everything in the catalog.
type Stock struct{ lines []string }

// ReadStock reads a YAML list of catalog ids. An entry such as en-12115-sd means that class with any layers; one such as
// en-12115-sd/EPDM means it with that material only. The error names every entry the catalog does not know.
func ReadStock(path string, c *catalog.Catalog) (*Stock, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	var lines []string
	if err := yaml.Unmarshal(text, &lines); err != nil {
		return nil, fmt.Errorf("%s: want a list of catalog ids, one behind each dash: %w", path, err)
	}
	s := &Stock{}
	var faults []error
	for _, line := range lines {
		ids := strings.Split(line, "/")
		for i, id := range ids {
			full, err := known(c, strings.TrimSpace(id), i > 0)
			if err != nil {
				faults = append(faults, fmt.Errorf("%s: %w", path, err))
			}
			ids[i] = full
		}
		s.lines = append(s.lines, strings.Join(ids, "/"))
	}
	return s, errors.Join(faults...)
}

// kindsInStock are the kinds a site can keep; a material stands behind a slash or for a body.
var kindsInStock = []string{catalog.Hoses, catalog.Seals, catalog.Connections, catalog.Materials}

func known(c *catalog.Catalog, id string, material bool) (string, error) {
	kinds := kindsInStock
	if material {
		kinds = []string{catalog.Materials}
	}
	var first error
	for _, k := range kinds {
		full, err := c.ID(k, id)
		if err == nil {
			return full, nil
		}
		var missing *catalog.NotFound
		if first == nil || errors.As(err, &missing) && len(missing.Nearest) > 0 {
			first = err
		}
	}
	return id, first
}

// has says whether the site keeps the thing, of that material when one is given.
func (s *Stock) has(id, material string) bool {
	if s == nil || id == "" {
		return true
	}
	return slices.ContainsFunc(s.lines, func(line string) bool {
		thing, of, only := strings.Cut(line, "/")
		return thing == id && (!only || of == material || material == "")
	})
}
