package catalog

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestLintOfASoundCatalog(t *testing.T) {
	c := small(t, nil)
	assert.Empty(t, c.Lint())
	assert.Equal(t, []string{"unused"}, c.UnusedSources())
}

// Each case breaks one thing of a sound file and names the one fault it must cause.
func TestLintFindsEachFault(t *testing.T) {
	const fluid, plain, hose = "fluids/butanone.yaml", "connections/plain.yaml", "hoses/std-1-a.yaml"
	for _, test := range []struct{ path, old, new, want string }{
		{hose, "standing: published}\nlayers", "standing: seen}\nlayers", `catalog hoses/std-1-a.yaml:6: standing "seen"; want one of [site published`},
		{hose, "source: doc-a, standing: published}\nlayers", "source: doc-a}\nlayers", ":6: no standing: say how the value is known"},
		{hose, "source: doc-a, standing: published}\nlayers", "standing: published}\nlayers", ":6: no source: only practice may go without"},
		{hose, "source: doc-a, standing: published}\nlayers", "standing: site, note: n}\nlayers", ":6: standing site is for site catalogs"},
		{hose, "source: doc-a, standing: published}\nlayers", "source: doc-b, standing: published}\nlayers", `:6: no source "doc-b" in the catalog; nearest: doc-a;`},
		{hose, "source: doc-a, standing: published}\nlayers", "source: doc-a, standing: published, sure: very}\nlayers", `:6: sure "very"; want high, medium or low`},
		{hose, "bar: 16", "bar: 7001", ":6: bar is 7001; want 0 to 7000"},
		{hose, "bar: 16", "bar: -0.1", ":6: bar is -0.1; want 0 to 7000"},
		{hose, "layers:", "vacuum_bar: {all: 0.9, standing: practice}\nlayers:", ":7: vacuum_bar is 0.9; want -1.014 to 0"},
		{hose, "layers:", "bend_mm: {by_size: [{size: DN 5, value: -1}], standing: practice}\nlayers:", ":7: bend_mm is -1; want 0 to 100000"},
		{hose, "layers:", "burst_ratio: {value: 0.4, standing: practice}\nlayers:", ":7: burst_ratio is 0.4; want 1 to 20"},
		{hose, "[FKM]", "[FKN]", `:8: no material "FKN" in the catalog; nearest: FKM;`},
		{hose, "[FKM]", "[]", ":8: the layer names no material"},
		{hose, "role: liner", "role: lining", `:8: role is "lining"; want one of liner, reinforcement, cover`},
		{hose, "service: steam", "service: steem", `:11: service is "steem"; want one of liquid, chemicals,`},
		{hose, "service: steam", "service: hot-water", `:11: no fluid of the catalog is used as "hot-water", so this never applies`},
		{hose, "[chemicals]", "[chemical]", `:9: only_for is "chemical"; want one of liquid,`},
		{"tables/reactions.yaml", "b: base", "b: bass", `catalog tables/reactions.yaml:1: b is "bass"; want one of acid,`},
		{"tables/reactions.yaml", "standing: practice", "standing: recalled", `catalog tables/reactions.yaml:1: no source`},
		{hose, "service: steam", "service: fluid:butanon", `:11: no fluid "butanon" in the catalog; nearest: butanone;`},
		{hose, "layers:", "temperature: {lowest_c: 50, highest_c: 40, standing: practice}\nlayers:", ":7: lowest_c lies above highest_c"},
		{hose, "layers:", "derating: {points: [{c: 20, value: 1}, {c: 20, value: 0.9}], standing: practice}\nlayers:", ":7: point at 20 °C follows 20 °C"},
		{hose, "layers:", "derating: {points: [{c: 20, value: 0.8}, {c: 40, value: 0.9}], standing: practice}\nlayers:", ":7: value rises from 0.8 to 0.9 at 40 °C"},
		{hose, "layers:", "derating: {points: [{c: 20, value: 1.1}], standing: practice}\nlayers:", ":7: point 1.1 at 20 °C is out of bounds; want values 0 to 1"},
		{hose, "layers:", "derating: {by_material: {FKN: [{c: 20, value: 1}]}, standing: practice}\nlayers:", `:7: no material "FKN"`},
		{hose, "layers:", "electrical_grades: {values: [M, N], standing: practice}\nlayers:", `:7: electrical_grades is "N"; want one of M, Ohm,`},
		{hose, "name: hose", "nam: hose", `:2: unknown key "nam"; nearest: name`},
		{fluid, "m: FKM", "m: FKN", `catalog fluids/butanone.yaml:10: no material "FKN"`},
		{fluid, "m: FKM, rating: unsuitable", "m: FKM, rating: bad", `:10: rating is "bad"; want one of suitable, limited, unsuitable`},
		{fluid, "to_c: 40, ", "", ":10: no to_c: a row speaks only up to a temperature"},
		{fluid, "to_c: 40, ", "to_c: 2001, ", ":10: to_c is 2001; want -273.15 to 2000"},
		{fluid, "to_c: 40, ", "to_c: 40, from_c: 50, ", ":10: from_c 50 lies above to_c 40"},
		{fluid, "to_c: 40, ", "to_c: 40, concentration: {from: 5, to: 4, standing: practice}, ", ":10: 5 to 4 per cent is no range"},
		{fluid, "to_c: 90", "to_c: 60", ":15: a second row for S31600 over the same concentration and temperature; the first is on line 13"},
		{fluid, "form: liquid", "form: fluid", `:4: form is "fluid"; want one of liquid, liquefied-gas`},
		{fluid, "contains: [copper]", "contains: [coper]", `:17: contains is "coper"; want one of aluminium, copper`},
		{fluid, "contains: [copper], ", "", ":17: the bar names no constituent and no material"},
		{fluid, "contains: [copper], ", "only: [S3160], ", `:17: no material "S3160" in the catalog`},
		{fluid, "regime: law 1, ", "", ":17: the bar names no regime"},
		{fluid, "form: liquid", "form: liquid\nproperties_of: butanon", `:1: no fluid "butanon"`},
		{fluid, "form: liquid", "form: liquid\nforbidden_pad_gases: [{id: nitrogn, why: w, standing: practice}]", `:1: no fluid "nitrogn" in the catalog; nearest: nitrogen;`},
		{fluid, "form: liquid", "form: liquid\ncylinder_outlets: [{family: plane, number: 1, standing: practice}]", `:5: no connection "plane" in the catalog; nearest: plain;`},
		{fluid, "form: liquid", "form: liquid\ndensity: {equation: dippr-105, c: [], from_k: 273, to_k: 370, standing: practice}", ":5: dippr-105 with 0 coefficients"},
		{fluid, "hazards:", "hazards:\n  reaction_groups: {values: [acids], standing: practice}", `:19: reaction_groups is "acids"; want one of acid,`},
		{fluid, "form: liquid", "form: &f liquid\nfamily: *f", "anchors and aliases are not used here"},
		{plain, "kinds: [flat]", "kinds: [flt]", `catalog connections/plain.yaml:7: no seal "flt" in the catalog; nearest: flat;`},
		{plain, "kinds: [flat], ", "", ":7: the seal is required, but no kind of seal fits it"},
		{plain, "{c: 20, value: 16}, {c: 100", "{c: 120, value: 16}, {c: 100", ":9: point at 100 °C follows 120 °C"},
		{plain, "value: 14", "value: 17", ":9: value rises from 16 to 17 at 100 °C; a rating never rises with temperature"},
		{plain, "[{c: 20, value: 16}, {c: 100, value: 14}]", "[]", ":9: the rating has no points"},
		{plain, "class: \"150\"", "materials: [S3160]", `:9: no material "S3160"`},
		{plain, "with: other", "with: othr", `:12: no connection "othr" in the catalog; nearest: other;`},
		{plain, "with: other", "with: plain", ":12: the pair of plain and plain is written twice; the first is at connections/plain.yaml:11"},
		{plain, "with: plain, verdict: fits", "with: plain, verdict: good", `:11: verdict is "good"; want one of fits, stop, no-fit`},
		{plain, "  - {with: plain, verdict: fits, why: same family, source: doc-a, standing: published}\n", "", "connections/plain.yaml: no mating row with itself"},
		{plain, "mates:", "outlets:\n  - {number: 1, fluids: [nitrogn], standing: practice}\nmates:", `:11: no fluid "nitrogn"`},
		{"connections/other.yaml", "with: other, verdict: fits", "with: plain, verdict: stop", ":12: the pair of plain and other is written twice; the first is at connections/other.yaml:9"},
		{"materials/FKM.yaml", "highest_c", "lowest_c: {value: 201, standing: practice}\nhighest_c", "catalog materials/FKM.yaml:1: lowest_c lies above highest_c"},
		{"materials/FKM.yaml", "family: elastomer", "family: elastomer\njudged_as: FKN", `:1: no material "FKN"`},
		{"seals/flat.yaml", "kind: gasket", "kind: gasket\nmaterials: [FKN]", `:1: no material "FKN"`},
		{"sources/doc-a.yaml", "via: report", "via: hearsay", `:3: via is "hearsay"; want one of law,`},
		{"sources/doc-a.yaml", "id: doc-a", "id: doc-b", `catalog sources/doc-a.yaml:1: id is "doc-b"`},
	} {
		files := edited(t, test.path, test.old, test.new)
		faults := open(files, indexOf(files)).Lint()
		require.NotEmpty(t, faults, test.want)
		assert.Contains(t, faults.Error(), test.want)
	}
}

func TestLintOfAnUnreadableOrigin(t *testing.T) {
	files := edited(t, "hoses/std-1-a.yaml", "source: doc-a, standing: published}\nlayers", "source: [doc-a], standing: published}\nlayers")
	assert.Contains(t, open(files, "").Lint().Error(), "catalog hoses/std-1-a.yaml:6: cannot unmarshal !!seq into string")
}

func TestFaultsOfNothing(t *testing.T) {
	assert.NoError(t, Faults(nil).err())
	assert.Equal(t, Faults{{"x", 0, assert.AnError.Error()}}, asFaults("x", assert.AnError))
	assert.Empty(t, pairsOf(parse(nil)))
}
