package catalog_test

import (
	"encoding/csv"
	"flag"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// published reads one file of testdata/published as rows by column name.
func published(t *testing.T, name string) []map[string]string {
	t.Helper()
	file, err := os.Open("../testdata/published/" + name)
	require.NoError(t, err)
	defer file.Close()
	lines, err := csv.NewReader(file).ReadAll()
	require.NoError(t, err)
	require.Greater(t, len(lines), 1, name)
	var rows []map[string]string
	for _, line := range lines[1:] {
		row := map[string]string{}
		for i, cell := range line {
			row[lines[0][i]] = cell
		}
		rows = append(rows, row)
	}
	return rows
}

// figure reads a number; an empty cell is 0 and false.
func figure(t *testing.T, text string) (float64, bool) {
	t.Helper()
	if text == "" {
		return 0, false
	}
	v, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	return v, true
}

func equation(e *catalog.Equation) measure.Equation {
	return measure.Equation{Name: e.Equation, C: e.C, From: units.Temperature(e.FromK), To: units.Temperature(e.ToK)}
}

// property works out the vapour pressure (psat, Pa) or the density (rho_l, kg/m3) of a catalog fluid. It is false
// outside the range the catalog claims for the equation, or when there is none.
func property(t *testing.T, id, what string, celsius float64) (float64, bool) {
	t.Helper()
	f, err := shipped.Fluid(id)
	require.NoError(t, err)
	k := units.Temperature(celsius + 273.15)
	if what == "psat" {
		if f.VapourP == nil {
			return 0, false
		}
		v, err := measure.VapourPressure(equation(f.VapourP), k)
		return float64(v), inRange(t, err)
	}
	if f.Density == nil {
		return 0, false
	}
	require.NotNil(t, f.Constants.MolarMassGMol, id)
	v, err := measure.LiquidDensity(equation(f.Density), f.Constants.MolarMassGMol.Value, k)
	return float64(v), inRange(t, err)
}

func inRange(t *testing.T, err error) bool {
	t.Helper()
	if _, outside := err.(*measure.OutsideError); outside {
		return false
	}
	require.NoError(t, err)
	return true
}

// fresh compares a generated file with what it should be, or writes it under -update.
func fresh(t *testing.T, path, want string) {
	t.Helper()
	if f := flag.Lookup("update"); f != nil && f.Value.String() == "true" {
		require.NoError(t, os.WriteFile(path, []byte(want), 0o644))
		return
	}
	have, err := os.ReadFile(path)
	require.NoError(t, err)
	require.True(t, string(have) == want, "%s is stale: run `go generate ./catalog`", path)
}

// shipped is shared by the tests: entries are decoded once.
var shipped = catalog.Open()
