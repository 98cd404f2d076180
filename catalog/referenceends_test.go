package catalog_test

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

func TestSampleOfHoses(t *testing.T) {
	for _, row := range published(t, "reference_sample/hoses.csv") {
		h, err := shipped.Hose(row["hose"])
		require.NoError(t, err)
		have, o := hoseFigure(h, row["key"])
		sameFigure(t, row, have)
		assert.Equal(t, row["standing"], string(o.Standing), "%v", row)
	}
}

func hoseFigure(h *catalog.Hose, key string) (string, catalog.Origin) {
	switch key {
	case "edition":
		return textOf(h.Edition)
	case "bar":
		if h.Rating == nil {
			return "absent", catalog.Origin{}
		}
		return fmt.Sprint(h.Rating.Bar), h.Rating.Origin
	case "lowest_c":
		return spanFigure(h.Temperature, func(s *catalog.Span) *float64 { return s.LowestC })
	case "highest_c":
		return spanFigure(h.Temperature, func(s *catalog.Span) *float64 { return s.HighestC })
	}
	return numberOf(map[string]*catalog.Number{"proof_ratio": h.ProofRatio, "burst_ratio": h.BurstRatio, "burst_bar": h.BurstBar}[key])
}

func spanFigure(s *catalog.Span, end func(*catalog.Span) *float64) (string, catalog.Origin) {
	if s == nil || end(s) == nil {
		return "absent", catalog.Origin{}
	}
	return fmt.Sprint(*end(s)), s.Origin
}

func TestSampleOfConnections(t *testing.T) {
	for _, row := range published(t, "reference_sample/connections.csv") {
		c, err := shipped.Connection(row["connection"])
		require.NoError(t, err)
		have, o := connectionFigure(c, row["key"], strings.Split(row["at"], "|"))
		sameFigure(t, row, have)
		assert.Equal(t, row["standing"], string(o.Standing), "%v", row)
	}
}

func connectionFigure(c *catalog.Connection, key string, at []string) (string, catalog.Origin) {
	switch key {
	case "rating":
		return ratingAt(c, at[0], at[1], at[2])
	case "circle_mm":
		for _, d := range c.Drilling {
			if d.Class == at[0] && d.Size == at[1] {
				return fmt.Sprint(d.CircleMM), d.Origin
			}
		}
	case "hand":
		for _, o := range c.Outlets {
			if o.Number == at[0] {
				return o.Hand, o.Origin
			}
		}
	}
	return "absent", catalog.Origin{}
}

func ratingAt(c *catalog.Connection, class, group, celsius string) (string, catalog.Origin) {
	at, _ := strconv.ParseFloat(celsius, 64)
	for _, r := range c.Ratings {
		for _, p := range r.Points {
			if r.Class == class && r.Group == group && p.C == at {
				return fmt.Sprint(p.Value), r.Origin
			}
		}
	}
	return "absent", catalog.Origin{}
}

// The counts of what the catalog was built from, and what was added since with its reason.
func TestCountsOfTheReference(t *testing.T) {
	const (
		pairs = 6503  // fluid and material pairs
		gaps  = 240   // of them marked as not found
		added = 8*4 + // copper alloys in anhydrous amines, which no law names but every handbook warns of
			9 + // metals that decompose pure hydrogen peroxide
			1 + // PEEK in pure sulfuric acid
			1 + // stainless braid behind a liner in wet chlorine
			61 // what meets compressed air, which every works has and the reference leaves out
	)
	rows, withVapour, withDensity := 0, 0, 0
	c := shipped
	for _, id := range c.IDs(catalog.Fluids) {
		f, err := c.Fluid(id)
		require.NoError(t, err)
		all, err := f.AllRows()
		require.NoError(t, err)
		rows += len(all)
		if f.VapourP != nil {
			withVapour++
		}
		if f.Density != nil {
			withDensity++
		}
	}
	assert.Equal(t, pairs-gaps+added, rows)
	assert.Equal(t, 194, withVapour, "195 fluids with properties, of which pure sulfuric acid has no vapour pressure")
	assert.GreaterOrEqual(t, withDensity, 195)
	assert.GreaterOrEqual(t, len(c.IDs(catalog.Materials)), 82)
	assert.GreaterOrEqual(t, len(hoseStandards(t, c)), 34)
}

func hoseStandards(t *testing.T, c *catalog.Catalog) map[string]bool {
	t.Helper()
	standards := map[string]bool{}
	for _, id := range c.IDs(catalog.Hoses) {
		h, err := c.Hose(id)
		require.NoError(t, err)
		standards[h.Standard] = true
	}
	return standards
}

func TestCountsOfDrillingAndOutlets(t *testing.T) {
	for id, want := range map[string]struct{ drilling, outlets int }{
		"flange-asme-b16-5": {43, 0}, "flange-en-1092-1": {70, 0}, "cylinder-cga-v1": {0, 42}, "cylinder-din-477-1": {0, 11}, "cylinder-bs-341-3": {0, 7},
	} {
		c, err := shipped.Connection(id)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, len(c.Drilling), want.drilling, id)
		assert.GreaterOrEqual(t, len(c.Outlets), want.outlets, id)
	}
}
