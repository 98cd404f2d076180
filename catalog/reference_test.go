package catalog_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

// Nothing loses its standing on the way in: seeded random samples of the figures the catalog was built from, each with
// the standing it had, against the catalog.

func TestSampleOfCompatibility(t *testing.T) {
	for _, row := range published(t, "reference_sample/compatibility.csv") {
		toC, _ := figure(t, row["to_c"])
		family, _ := strconv.ParseBool(row["by_family"])
		same := slices.ContainsFunc(rowsOf(t, row["fluid"], row["material"]), func(r catalog.Row) bool {
			return r.Rating == row["rating"] && r.ToC == toC && r.Sure == row["sure"] && r.Family == family && string(r.Standing) == row["standing"]
		})
		assert.True(t, same, "%v", row)
	}
}

// A pair for which nothing trustworthy was found stays absent.
func TestSampleOfGaps(t *testing.T) {
	for _, row := range published(t, "reference_sample/gaps.csv") {
		f, err := shipped.Fluid(row["fluid"])
		require.NoError(t, err)
		rows, err := f.Rows(row["material"])
		require.NoError(t, err)
		assert.Empty(t, rows, "%v", row)
	}
}

func TestSampleOfFluids(t *testing.T) {
	for _, row := range published(t, "reference_sample/fluids.csv") {
		f, err := shipped.Fluid(row["fluid"])
		require.NoError(t, err)
		have, o := fluidFigure(f, row["key"])
		sameFigure(t, row, have)
		assert.Equal(t, row["standing"], string(o.Standing), "%v", row)
	}
}

// sameFigure compares numbers as numbers and words as words.
func sameFigure(t *testing.T, row map[string]string, have string) {
	t.Helper()
	want, wantErr := strconv.ParseFloat(row["value"], 64)
	got, gotErr := strconv.ParseFloat(have, 64)
	if wantErr == nil && gotErr == nil {
		assert.InDelta(t, want, got, 1e-4*math.Abs(want), "%v: %s", row, have) // the flash points were rounded to 0.1 °C
		return
	}
	assert.Equal(t, row["value"], have, "%v", row)
}

func numberOf(n *catalog.Number) (string, catalog.Origin) {
	if n == nil {
		return "absent", catalog.Origin{}
	}
	return fmt.Sprint(n.Value), n.Origin
}

func textOf(n *catalog.Text) (string, catalog.Origin) {
	if n == nil {
		return "absent", catalog.Origin{}
	}
	return n.Value, n.Origin
}

func coefficient(e *catalog.Equation, i int) (string, catalog.Origin) {
	if e == nil || i >= len(e.C) {
		return "absent", catalog.Origin{}
	}
	return fmt.Sprint(e.C[i]), e.Origin
}

// fluidFigure finds a figure of a fluid by the key of the sample.
func fluidFigure(f *catalog.Fluid, key string) (string, catalog.Origin) {
	if name, place, ok := strings.Cut(key, "_c"); ok && (place == "1" || place == "2") {
		i, _ := strconv.Atoi(place)
		return coefficient(map[string]*catalog.Equation{"psat": f.VapourP, "rho": f.Density, "mu": f.Viscosity}[name], i-1)
	}
	k, h := f.Constants, f.Hazards
	switch key {
	case "un":
		return textOf(f.UN)
	case "conductivity_class":
		return textOf(f.Electrical.Class)
	case "hansen_d":
		return fmt.Sprint(f.Hansen.D), f.Hansen.Origin
	case "kappa_k0":
		return coefficient(f.Compress, 0)
	case "flash_k":
		text, o := numberOf(h.FlashPointC)
		c, _ := strconv.ParseFloat(text, 64)
		return fmt.Sprint(c + 273.15), o
	}
	return numberOf(map[string]*catalog.Number{
		"molar_mass_g_mol": k.MolarMassGMol, "critical_temperature_k": k.CriticalTemperatureK, "critical_pressure_pa": k.CriticalPressurePa,
		"acentric_factor": k.AcentricFactor, "lower_flammable_limit_pct": h.LowerLimitPct, "upper_flammable_limit_pct": h.UpperLimitPct,
	}[key])
}

func TestSampleOfMaterials(t *testing.T) {
	for _, row := range published(t, "reference_sample/materials.csv") {
		m, err := shipped.Material(row["material"])
		require.NoError(t, err)
		have, o := materialFigure(m, row["key"])
		sameFigure(t, row, have)
		if o.Standing != "" { // what a material is strong or weak against carries no evidence of its own
			assert.Equal(t, row["standing"], string(o.Standing), "%v", row)
		}
	}
}

func materialFigure(m *catalog.Material, key string) (string, catalog.Origin) {
	switch key {
	case "storage_group":
		return textOf(m.Storage)
	case "strong_against":
		return m.Strong, catalog.Origin{}
	case "weak_against":
		return m.Weak, catalog.Origin{}
	}
	return numberOf(map[string]*catalog.Number{"lowest_c": m.LowestC, "highest_c": m.HighestC, "intermittent_highest_c": m.Intermit}[key])
}
