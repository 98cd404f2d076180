package measure_test

import (
	"cmp"
	"encoding/csv"
	"errors"
	"os"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// trapped is a row of the published file and how far the method is from it, as a part of the rise.
type trapped struct {
	name         string
	from, to, by float64
}

// id finds the fluid by its CAS number, by its name where the catalog has several of that number, such as wet ones.
func id(row []string) string {
	var several *catalog.Ambiguous
	if _, err := catalog.Open().Fluid(row[0]); errors.As(err, &several) {
		return row[1]
	}
	return row[0]
}

func trappedRows(t *testing.T) (out []trapped, refused []string) {
	f, err := os.Open("../../testdata/published/eos_trapped_liquid.csv")
	require.NoError(t, err)
	defer func() { assert.NoError(t, f.Close()) }()
	rows, err := csv.NewReader(f).ReadAll()
	require.NoError(t, err)
	require.Len(t, rows, 305)
	for _, row := range rows[1:] {
		n := func(i int) float64 { return no(strconv.ParseFloat(row[i], 64)) }
		p, err := measure.BlockedIn(liquid(t, id(row)), measure.Container{}, units.AbsolutePressure(bar*n(4)), c(n(2)), c(n(3)))
		if err != nil {
			var out *measure.OutsideError
			require.True(t, errors.As(err, &out), "%s: %v", row[1], err)
			refused = append(refused, row[1]+": "+err.Error())
			continue
		}
		exact, start := n(6), n(4)
		out = append(out, trapped{row[1], n(2), n(3), (float64(p)/bar-start)/(exact-start) - 1})
	}
	return out, refused
}

// Every row of the file, by the catalog's equations: constant expansion over compressibility at the fill state, water by
// its own equation. Lowest -3.7 % (R-125, 20 to 50 °C), highest +4.4 % (R-1336mzz(E), 0 to 40 °C) of the rise.
func TestTrappedLiquidAgainstEquationsOfState(t *testing.T) {
	rows, refused := trappedRows(t)
	assert.Empty(t, refused)
	assert.Len(t, rows, 304)
	for _, r := range rows {
		assert.GreaterOrEqual(t, r.by, -0.04, "%s from %g to %g °C", r.name, r.from, r.to)
		assert.LessOrEqual(t, r.by, 0.05, "%s from %g to %g °C", r.name, r.from, r.to)
		if r.name == "water" {
			assert.InDelta(t, 0, r.by, 2e-3)
		}
	}
	slices.SortStableFunc(rows, func(a, b trapped) int { return cmp.Compare(a.by, b.by) })
	t.Logf("lowest %+v, highest %+v", rows[0], rows[len(rows)-1])
}
