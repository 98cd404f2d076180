package catalog

import (
	"crypto/sha256"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// siteDir writes a site directory and returns its path.
func siteDir(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	for name, text := range files {
		require.NoError(t, os.MkdirAll(filepath.Dir(filepath.Join(dir, name)), 0o755))
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644))
	}
	return dir
}

func laid(t *testing.T, c *Catalog, files map[string]string) *Catalog {
	t.Helper()
	over, err := c.Overlay(siteDir(t, files))
	require.NoError(t, err)
	return over
}

const butanoneLetter = `id: butanone
also: [the blue drum]
compatibility:
  metals:
    - {m: S31600, rating: suitable, to_c: 70, note: letter 12, standing: site}
  elastomers:
    - {m: FKM, rating: suitable, to_c: 70, note: letter 12, standing: site}
bars:
  - {contains: [zinc], regime: site, why: letter 12, source: letter 12, standing: site}
`

func ratings(rows []Row) (words []string) {
	for _, r := range rows {
		words = append(words, fmt.Sprintf("%s %s %v %s", r.Material, r.Rating, r.ToC, r.Standing))
	}
	return words
}

func TestOverlayReplacesRowsByMaterial(t *testing.T) {
	base := small(t, nil)
	f, err := laid(t, base, map[string]string{"fluids/butanone.yaml": butanoneLetter}).Fluid("The Blue Drum")
	require.NoError(t, err)
	rows, err := f.Rows("S31600")
	require.NoError(t, err)
	assert.Equal(t, []string{"S31600 suitable 70 site"}, ratings(rows), "recalled rows give way")
	rows, err = f.Rows("S31603")
	require.NoError(t, err)
	assert.Equal(t, []string{"S31603 limited 60 recalled"}, ratings(rows), "other materials stay")
	rows, err = f.Rows("FKM")
	require.NoError(t, err)
	assert.Equal(t, []string{"FKM unsuitable 40 published", "FKM suitable 70 site"}, ratings(rows), "an adverse row that was read stays")
	all, err := f.AllRows()
	require.NoError(t, err)
	assert.Len(t, all, 4)
}

func TestOverlayCannotLiftABar(t *testing.T) {
	base := small(t, nil)
	over := laid(t, base, map[string]string{"fluids/butanone.yaml": butanoneLetter})
	f, err := over.Fluid("MEK")
	require.NoError(t, err)
	require.Len(t, f.Bars, 2)
	assert.Equal(t, []string{"copper"}, f.Bars[0].Contains)
	assert.Equal(t, []string{"MEK", "ethyl methyl ketone", "the blue drum"}, f.Also)
	assert.Equal(t, "Butanone", f.Name, "keys that are not written stay")

	before, err := base.Fluid("MEK")
	require.NoError(t, err)
	assert.Len(t, before.Bars, 1, "the catalog below is not changed")
	_, err = base.Fluid("the blue drum")
	assert.Error(t, err)
}

func TestOverlayReplacesByKey(t *testing.T) {
	over := laid(t, small(t, nil), map[string]string{"hoses/std-1-a.yaml": `id: std-1-a
rating: {bar: 25, source: certificate 7, standing: site}
not_for:
  - {service: flammable, note: cleaned for nothing, standing: site}
`})
	h, err := over.Hose("std-1-a")
	require.NoError(t, err)
	assert.Equal(t, Rating{Bar: 25, Origin: Origin{Source: "certificate 7", Standing: Site}}, *h.Rating)
	assert.Equal(t, []string{"steam", "flammable"}, []string{h.NotFor[0].Service, h.NotFor[1].Service})
	assert.Equal(t, "hose of class A", h.Name)
}

func TestOverlayReplacesGroupsOfValues(t *testing.T) {
	over := laid(t, small(t, nil), map[string]string{"fluids/nitrogen.yaml": `id: nitrogen
constants: {boiling_point_k: {value: 77.3, source: certificate 8, standing: site}}
cylinder_outlets: [{family: plain, number: 9, note: seen on the cylinder, standing: site}]
`})
	f, err := over.Fluid("nitrogen")
	require.NoError(t, err)
	assert.Equal(t, 77.3, f.Constants.BoilingPointK.Value)
	assert.Equal(t, "9", f.Outlets[0].Number)
}

func TestOverlayMates(t *testing.T) {
	over := laid(t, small(t, nil), map[string]string{"connections/plain.yaml": `id: plain
mates:
  - {with: plain, verdict: no-fit, why: ours are worn, note: gauge record, standing: site}
  - {with: other, verdict: fits, why: it did once, note: somebody, standing: site}
`})
	c, err := over.Connection("plain")
	require.NoError(t, err)
	var got []string
	for _, m := range c.Mates {
		got = append(got, m.With+" "+m.Verdict)
	}
	assert.Equal(t, []string{"other stop", "plain no-fit", "other fits"}, got)
	assert.Empty(t, over.Lint())
}

func TestOverlayAddsEntries(t *testing.T) {
	over := laid(t, small(t, nil), map[string]string{
		"fluids/blend.yaml": "id: blend\nname: Our blend\nform: liquid\ncompatibility:\n  metals:\n" +
			"    - {m: OURS, rating: suitable, to_c: 40, source: test 3, standing: site}\n",
		"materials/OURS.yaml": "id: OURS\nname: our alloy\nfamily: metal\ncontains: [iron]\n",
		"sources/test-3.yaml": "id: test-3\ndocument: coupon test 3\n",
		"README.md":           "not read",
		".hidden/x":           "not read",
		"fluids/.hidden":      "not read",
	})
	f, err := over.Fluid("our blend")
	require.NoError(t, err)
	rows, err := f.Rows("OURS")
	require.NoError(t, err)
	assert.Len(t, rows, 1)
	assert.Equal(t, []string{"blend", "butanone", "nitrogen", "steam"}, over.IDs(Fluids))
	_, err = over.Fluid("our blond")
	assert.ErrorContains(t, err, "nearest: blend")
}

func TestOverlayDigest(t *testing.T) {
	base := small(t, nil)
	over := laid(t, base, map[string]string{"fluids/butanone.yaml": butanoneLetter})
	stream := fixture["fluids/butanone.yaml"] + "---\n" + butanoneLetter
	assert.Equal(t, stream, string(over.Raw(Fluids, "butanone")))
	assert.Equal(t, fmt.Sprintf("%x", sha256.Sum256([]byte(stream))), over.Digest(Fluids, "butanone"))
	assert.NotEqual(t, base.Digest(Fluids, "butanone"), over.Digest(Fluids, "butanone"))
	assert.Equal(t, base.Digest(Fluids, "nitrogen"), over.Digest(Fluids, "nitrogen"))
}

func TestOverlayOnOverlay(t *testing.T) {
	first := laid(t, small(t, nil), map[string]string{"fluids/butanone.yaml": butanoneLetter})
	second := laid(t, first, map[string]string{"fluids/butanone.yaml": "id: butanone\ncompatibility:\n  metals:\n" +
		"    - {m: S31600, rating: unsuitable, to_c: 70, note: letter 13, standing: site}\n"})
	for c, want := range map[*Catalog]string{first: "S31600 suitable 70 site", second: "S31600 unsuitable 70 site"} {
		f, err := c.Fluid("butanone")
		require.NoError(t, err)
		rows, err := f.Rows("S31600")
		require.NoError(t, err)
		assert.Equal(t, []string{want}, ratings(rows))
	}
}

func TestOverlayFaults(t *testing.T) {
	for _, test := range []struct{ name, path, text, want string }{
		{"other standing", "hoses/std-1-a.yaml", "id: std-1-a\nrating: {bar: 25, source: c, standing: published}\n",
			"hoses/std-1-a.yaml:2: standing published; a value of a site catalog has the standing site"},
		{"no evidence", "hoses/std-1-a.yaml", "id: std-1-a\nrating: {bar: 25, standing: site}\n",
			"hoses/std-1-a.yaml:2: no evidence: name the certificate, nameplate or letter in source or note"},
		{"no standing", "hoses/std-1-a.yaml", "id: std-1-a\nrating: {bar: 25, note: c}\n",
			"hoses/std-1-a.yaml:2: no standing: say how the value is known"},
		{"row without evidence", "fluids/butanone.yaml", "id: butanone\ncompatibility:\n  metals:\n    - {m: S31600, rating: suitable, to_c: 9, standing: site}\n",
			"fluids/butanone.yaml:4: no evidence"},
		{"row unreadable", "fluids/butanone.yaml", "id: butanone\ncompatibility:\n  metals:\n    - {m: S31600, to_c: hot}\n",
			"fluids/butanone.yaml:4: cannot unmarshal"},
		{"unknown material", "fluids/butanone.yaml", "id: butanone\ncompatibility:\n  metals:\n    - {m: S31609, rating: suitable, to_c: 9, note: n, standing: site}\n",
			"fluids/butanone.yaml:4: no material \"S31609\" in the catalog; nearest: S31600, S31603;"},
		{"lifted by composition", "materials/S31600.yaml", "id: S31600\ncontains: []\n",
			"materials/S31600.yaml:2: contains has no place for evidence, so a site file cannot change it for a known entry"},
		{"unknown key", "seals/flat.yaml", "id: flat\nkinds: gasket\n", "seals/flat.yaml:2: unknown key \"kinds\"; nearest: kind"},
		{"other id", "seals/flat.yaml", "id: round\n", "seals/flat.yaml:1: id is \"round\""},
		{"other ending", "seals/flat.yml", "id: flat\n", "seals/flat.yml: want files ending in .yaml here"},
		{"other folder", "gaskets/flat.yaml", "id: flat\n", "gaskets: no such folder in a catalog; want one of fluids, materials, "},
		{"folder for a file", "seals/flat.yaml/x", "", "seals/flat.yaml: "},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, err := small(t, nil).Overlay(siteDir(t, map[string]string{test.path: test.text}))
			require.ErrorContains(t, err, test.want)
			assert.IsType(t, Faults{}, err)
		})
	}
	_, err := small(t, nil).Overlay(filepath.Join(t.TempDir(), "none"))
	assert.ErrorContains(t, err, "site catalog: ")
}

func TestOverlayReportsAllFaults(t *testing.T) {
	_, err := small(t, nil).Overlay(siteDir(t, map[string]string{
		"seals/a.yaml": "id: b\n", "hoses/a.yaml": "id: [\n", "more/a.yaml": "",
	}))
	var faults Faults
	require.ErrorAs(t, err, &faults)
	assert.Len(t, faults, 3)
}
