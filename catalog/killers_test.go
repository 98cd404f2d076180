package catalog_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

// rowsOf are the rows of a fluid for one material; the test fails if there are none.
func rowsOf(t *testing.T, fluid, material string) []catalog.Row {
	t.Helper()
	f, err := shipped.Fluid(fluid)
	require.NoError(t, err)
	rows, err := f.Rows(material)
	require.NoError(t, err)
	require.NotEmpty(t, rows, "%s knows nothing of %s", fluid, material)
	return rows
}

// unsuitable wants every row of every pair to say so.
func unsuitable(fluids, materials []string) func(*testing.T) {
	return func(t *testing.T) {
		for _, f := range fluids {
			for _, m := range materials {
				for _, r := range rowsOf(t, f, m) {
					assert.Equal(t, "unsuitable", r.Rating, "%s in %s to %v °C", m, f, r.ToC)
				}
			}
		}
	}
}

// neverSuitable allows limited: a written condition is asked for.
func neverSuitable(fluids, materials []string) func(*testing.T) {
	return func(t *testing.T) {
		for _, f := range fluids {
			for _, m := range materials {
				for _, r := range rowsOf(t, f, m) {
					assert.NotEqual(t, "suitable", r.Rating, "%s in %s to %v °C", m, f, r.ToC)
				}
			}
		}
	}
}

// barred wants a legal bar that keeps every material from every fluid, found as the rules find it: by what the
// material contains, or by what alone is allowed.
func barred(fluids, materials []string) func(*testing.T) {
	return func(t *testing.T) {
		for _, id := range fluids {
			f, err := shipped.Fluid(id)
			require.NoError(t, err)
			for _, m := range materials {
				material, err := shipped.Material(m)
				require.NoError(t, err)
				assert.True(t, slices.ContainsFunc(f.Bars, func(b catalog.Bar) bool { return keepsOut(b, material) }), "%s may meet %s", m, id)
			}
		}
	}
}

func keepsOut(b catalog.Bar, m *catalog.Material) bool {
	if len(b.Only) > 0 && m.Family == "metal" && !slices.Contains(b.Only, m.ID) {
		return true
	}
	return slices.ContainsFunc(m.Contains, func(c string) bool { return slices.Contains(b.Contains, c) })
}

func all(checks ...func(*testing.T)) func(*testing.T) {
	return func(t *testing.T) {
		for _, check := range checks {
			check(t)
		}
	}
}

// excluded wants hose classes to be kept out of a service.
func excluded(service string, hoses ...string) func(*testing.T) {
	return func(t *testing.T) {
		for _, id := range hoses {
			h, err := shipped.Hose(id)
			require.NoError(t, err)
			assert.True(t, slices.ContainsFunc(h.NotFor, func(e catalog.Exclusion) bool { return e.Service == service }), "%s is open to %s", id, service)
		}
	}
}

// permeable wants a liner to be known to let molecules through to the layer behind it.
func permeable(materials ...string) func(*testing.T) {
	return func(t *testing.T) {
		for _, id := range materials {
			m, err := shipped.Material(id)
			require.NoError(t, err)
			require.NotNil(t, m.Permeable, id)
			assert.True(t, m.Permeable.Value, id)
		}
	}
}

// copperAlloys, brasses, aluminium, zinc and the fluoro rubbers come up again and again.
var (
	copperAlloys = []string{"C11000", "C36000", "C37700", "C83600"}
	aluminium    = []string{"A96061", "A03560"}
	zinc         = []string{"Z33520", "ZN-STEEL"}
	fkm          = []string{"FKM-1", "FKM-2", "FKM-3"}
	pvc          = []string{"PVC-P", "PVC-U"}
)

func join(lists ...[]string) []string { return slices.Concat(lists...) }
func ids(names ...string) []string    { return names }

// coolOnly wants no row to speak for more than a temperature.
func coolOnly(fluid, material string, highest float64) func(*testing.T) {
	return func(t *testing.T) {
		for _, r := range rowsOf(t, fluid, material) {
			assert.LessOrEqual(t, r.ToC, highest, "%s in %s", material, fluid)
		}
	}
}

// padForbidden wants a pad gas to be forbidden.
func padForbidden(gas string, fluids ...string) func(*testing.T) {
	return func(t *testing.T) {
		for _, id := range fluids {
			f, err := shipped.Fluid(id)
			require.NoError(t, err)
			assert.True(t, slices.ContainsFunc(f.ForbidPads, func(r catalog.Reason) bool { return r.ID == gas }), "%s may lie over %s", gas, id)
		}
	}
}
