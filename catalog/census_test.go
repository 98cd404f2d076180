package catalog_test

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

// standings are the columns of the census, strongest first. A site's own rows are not in the built-in catalog.
var standings = []catalog.Standing{catalog.Published, catalog.Restated, catalog.Computed, catalog.Recalled, catalog.Practice}

// valued calls visit for every value with an origin inside v.
func valued(v reflect.Value, visit func(catalog.Origin)) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			valued(v.Elem(), visit)
		}
	case reflect.Slice:
		for i := range v.Len() {
			valued(v.Index(i), visit)
		}
	case reflect.Struct:
		if o, ok := v.Interface().(catalog.Origin); ok {
			if o.Standing != "" {
				visit(o)
			}
			return
		}
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				valued(v.Field(i), visit)
			}
		}
	}
}

// values collects every value of the built-in catalog by kind; the compatibility rows and the tables stand apart.
func values(t *testing.T) map[string][]catalog.Origin {
	t.Helper()
	c := shipped
	found := map[string][]catalog.Origin{}
	take := func(kind string, v any, err error) {
		require.NoError(t, err)
		valued(reflect.ValueOf(v), func(o catalog.Origin) { found[kind] = append(found[kind], o) })
	}
	for _, id := range c.IDs(catalog.Fluids) {
		f, err := c.Fluid(id)
		require.NoError(t, err)
		take("fluids, properties and hazards", f, nil)
		rows, err := f.AllRows()
		take("fluids, compatibility rows", rows, err)
	}
	for _, id := range c.IDs(catalog.Materials) {
		m, err := c.Material(id)
		take("materials", m, err)
	}
	for _, id := range c.IDs(catalog.Hoses) {
		h, err := c.Hose(id)
		take("hoses", h, err)
	}
	for _, id := range c.IDs(catalog.Connections) {
		k, err := c.Connection(id)
		take("connections", k, err)
	}
	for _, id := range c.IDs(catalog.Seals) {
		s, err := c.Seal(id)
		take("seals", s, err)
	}
	for _, id := range c.TableIDs() {
		table, err := c.Table(id)
		take("tables", table, err)
	}
	reactions, err := c.Reactions()
	take("tables", reactions, err)
	return found
}

var censusKinds = []string{"fluids, properties and hazards", "fluids, compatibility rows", "materials", "hoses", "connections", "seals", "tables"}

const censusHeading = `# Census of the catalog

Written by ` + "`go generate ./catalog`" + `. Every value carries its source and its standing: published means that the document itself was
read, in whole or in the part that counts; restated, that somebody's rendering of it was; computed, that it follows from values of
known standing; recalled, that it was written down from memory of the named document and has to be confirmed; practice, that it is
common practice without a source. A favourable value that is recalled or practice never makes a line fit by itself.

`

// TestCensusFresh proves that catalog/CENSUS.md counts what is there.
func TestCensusFresh(t *testing.T) {
	var b strings.Builder
	b.WriteString(censusHeading)
	c := shipped
	fmt.Fprintf(&b, "| entries | number |\n|---|---:|\n")
	for _, kind := range catalog.Kinds {
		fmt.Fprintf(&b, "| %s | %d |\n", kind, len(c.IDs(kind)))
	}
	fmt.Fprintf(&b, "| tables | %d |\n\n| values | all |", len(c.TableIDs())+1)
	for _, s := range standings {
		fmt.Fprintf(&b, " %s |", s)
	}
	b.WriteString("\n|---|---:|" + strings.Repeat("---:|", len(standings)) + "\n")
	found := values(t)
	var everything []catalog.Origin
	for _, kind := range censusKinds {
		b.WriteString(censusLine(kind, found[kind]))
		everything = append(everything, found[kind]...)
	}
	b.WriteString(censusLine("**all**", everything))
	fresh(t, "CENSUS.md", b.String())
}

func censusLine(kind string, origins []catalog.Origin) string {
	line := fmt.Sprintf("| %s | %d |", kind, len(origins))
	for _, s := range standings {
		n := 0
		for _, o := range origins {
			if o.Standing == s {
				n++
			}
		}
		line += fmt.Sprintf(" %d |", n)
	}
	return line + "\n"
}

// A document that was only recalled, or read in someone else's rendering, cannot have been read.
func TestPublishedMeansRead(t *testing.T) {
	judged := 0
	for kind, origins := range values(t) {
		for _, o := range origins {
			if o.Standing != catalog.Published {
				continue
			}
			judged++
			s, err := shipped.Source(o.Source)
			require.NoError(t, err, kind)
			assert.True(t, slices.Contains([]string{"law", "abstract", "excerpt", "report"}, s.Via), "%s: published, but %s is known by %s", kind, o.Source, s.Via)
		}
	}
	assert.Greater(t, judged, 300)
}
