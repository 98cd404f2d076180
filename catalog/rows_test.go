package catalog

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const anyFluid = "id: x\nname: X\nform: liquid\n"

func fluidWith(t *testing.T, block string) *Fluid {
	t.Helper()
	f := new(Fluid)
	require.NoError(t, decode("fluids/x.yaml", []byte(anyFluid+block), f))
	return f
}

// sameAsWhole proves that picking rows gives what decoding everything and filtering gives.
func sameAsWhole(t *testing.T, path string, raw []byte, materials []string) {
	t.Helper()
	var whole fluidFile
	require.NoError(t, strict(path, raw, &whole))
	f := new(Fluid)
	require.NoError(t, decode(path, raw, f))
	for _, m := range append(materials, "no such material") {
		want := slices.DeleteFunc(whole.Table.All(), func(r Row) bool { return r.Material != m })
		got, err := f.Rows(m)
		require.NoError(t, err)
		assert.True(t, assert.ObjectsAreEqualValues(len(want), len(got)) && slices.EqualFunc(want, got, sameRow), "%s: %s", path, m)
	}
	all, err := f.AllRows()
	require.NoError(t, err)
	assert.Len(t, all, len(whole.Table.All()))
}

func sameRow(a, b Row) bool { return assert.ObjectsAreEqual(a, b) }

func TestRowsEqualWholeFile(t *testing.T) {
	c := Open()
	for _, id := range c.IDs(Fluids) {
		sameAsWhole(t, "fluids/"+id+".yaml", c.Raw(Fluids, id), c.IDs(Materials))
	}
}

// The quick path needs one row to a line; a file written otherwise would work, but slowly.
func TestRowsAreOneToALine(t *testing.T) {
	c := Open()
	for _, id := range c.IDs(Fluids) {
		_, table := cut("fluids/"+id+".yaml", c.Raw(Fluids, id))
		_, ok := table.pick("none")
		assert.True(t, ok, "fluids/%s.yaml: write each row on one line as `- {m: ID, ...}`", id)
	}
}

func TestRowsWrittenInAnyWay(t *testing.T) {
	for name, block := range map[string]string{
		"none":          "",
		"empty":         "compatibility: {}\n",
		"plain":         "compatibility:\n  metals:\n    - {m: A, rating: limited, to_c: 1}\n    - {m: B, rating: limited, to_c: 1}\n",
		"no last break": "compatibility:\n  metals:\n    - {m: A, rating: limited, to_c: 1}",
		"quoted":        "compatibility:\n  metals:\n    - {m: \"A\", rating: limited, to_c: 1}\n    - {m: 'B', rating: limited, to_c: 1}\n",
		"block rows":    "compatibility:\n  metals:\n    - m: A\n      rating: limited\n    - m: B\n      rating: limited\n",
		"wrapped":       "compatibility:\n  metals:\n    - {m: A, rating: limited,\n       to_c: 1}\n    - {m: B, rating: limited, to_c: 1}\n",
		"nested wrap":   "compatibility:\n  metals:\n    - {m: A, concentration: {from: 1, to: 2}\n       , to_c: 1}\n    - {m: B, to_c: 1}\n",
		"other order":   "compatibility:\n  metals:\n    - {rating: limited, m: A, to_c: 1}\n    - {m: B, to_c: 1}\n",
		"comments":      "compatibility:\n  metals: # why\n    # - {m: A, to_c: 7}\n    - {m: A, to_c: 1} # more\n    - {m: B, to_c: 1}\n",
		"windows":       strings.ReplaceAll("compatibility:\n  metals:\n    - {m: A, to_c: 1}\n\n    - {m: B, to_c: 1}\nfamily: f\n", "\n", "\r\n"),
		"strings":       "compatibility:\n  metals:\n    - {m: A, effect: 'swells }, a lot', to_c: 1}\n    - {m: B, effect: \"m: A, {x}\", to_c: 1}\n",
		"two materials": "compatibility:\n  metals:\n    - {m: A, to_c: 1}\n  plastics:\n    - {m: A1, to_c: 1}\nfamily: f\n# last\n",
	} {
		t.Run(name, func(t *testing.T) {
			sameAsWhole(t, "fluids/x.yaml", []byte(anyFluid+block), []string{"A", "A1", "B"})
		})
	}
}

func TestRowsOfSeveralMaterials(t *testing.T) {
	f, err := small(t, nil).Fluid("butanone")
	require.NoError(t, err)
	rows, err := f.Rows("S31603", "FKM")
	require.NoError(t, err)
	require.Len(t, rows, 2)
	assert.Equal(t, "limited", rows[0].Rating)
	assert.Equal(t, "unsuitable", rows[1].Rating)
	again, err := f.Rows("S31603")
	require.NoError(t, err)
	assert.Equal(t, rows[:1], again)
}

func TestRowsFaultsNameTheLine(t *testing.T) {
	f := fluidWith(t, "compatibility:\n  metals:\n    - {m: A, to_c: 1}\n    - {m: B, ratng: limited}\n")
	_, err := f.Rows("A")
	assert.NoError(t, err)
	_, err = f.Rows("A", "B")
	assert.ErrorContains(t, err, "catalog fluids/x.yaml:7: unknown key \"ratng\"; nearest: rating")
	_, err = f.AllRows()
	assert.ErrorContains(t, err, "catalog fluids/x.yaml:7: ")

	f = fluidWith(t, "compatibility:\n  metals:\n    - {m: A,\n to_c: hot}\n")
	_, err = f.Rows("A")
	assert.ErrorContains(t, err, "catalog fluids/x.yaml:7: cannot unmarshal")
}

func TestRowsOfAZeroFluid(t *testing.T) {
	rows, err := new(Fluid).Rows("A")
	require.NoError(t, err)
	assert.Empty(t, rows)
	rows, err = new(Fluid).AllRows()
	require.NoError(t, err)
	assert.Empty(t, rows)
}

func TestRowsSecondBlockIsRefused(t *testing.T) {
	err := decode("fluids/x.yaml", []byte(anyFluid+"compatibility:\n  metals: []\nfamily: f\ncompatibility: {}\n"), new(Fluid))
	assert.ErrorContains(t, err, "catalog fluids/x.yaml:7: unknown key \"compatibility\"")
}
