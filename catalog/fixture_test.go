package catalog

import (
	"maps"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
)

// All figures of this fixture are invented; they only exercise the code.
var fixture = map[string]string{
	"sources/doc-a.yaml":  "id: doc-a\ndocument: Invented document A\nvia: report\n",
	"sources/unused.yaml": "id: unused\ndocument: Invented document nobody names\n",
	"materials/FKM.yaml":  "id: FKM\nname: fluorinated rubber\nfamily: elastomer\nhighest_c: {value: 200, source: doc-a, standing: published}\n",
	"materials/S31600.yaml": "id: S31600\nname: stainless steel, molybdenum bearing\nalso: [stainless 316]\nfamily: metal\n" +
		"contains: [nickel, iron]\n",
	"materials/C11000.yaml": "id: C11000\nname: copper\nfamily: metal\ncontains: [copper]\n",
	"tables/reactions.yaml": "- {a: acid, b: base, product: heat, standing: practice}\n",
	"materials/S31603.yaml": "id: S31603\nname: the same with low carbon\nalso: [Stainless-316, S31600]\nfamily: metal\n",
	"seals/flat.yaml":       "id: flat\nname: flat gasket\nkind: gasket\n",
	"connections/plain.yaml": `id: plain
name: plain flange
standard: STD 1
kind: flange
sized_by: dn
gendered: false
seal: {required: true, kinds: [flat], source: doc-a, standing: published}
ratings:
  - {class: "150", points: [{c: 20, value: 16}, {c: 100, value: 14}], source: doc-a, standing: published}
mates:
  - {with: plain, verdict: fits, why: same family, source: doc-a, standing: published}
  - {with: other, verdict: stop, why: other drilling, source: doc-a, standing: published}
`,
	"connections/other.yaml": `id: other
name: other flange
standard: STD 2
kind: flange
sized_by: dn
gendered: false
seal: {required: false, standing: practice}
mates:
  - {with: other, verdict: fits, why: same family, standing: practice}
`,
	"hoses/std-1-a.yaml": `id: std-1-a
name: hose of class A
also: [class A hose]
standard: STD 1
class: A
rating: {bar: 16, source: doc-a, standing: published}
layers:
  - {role: liner, materials: [FKM], source: doc-a, standing: published}
only_for: {values: [chemicals], source: doc-a, standing: published}
not_for:
  - {service: steam, source: doc-a, standing: published}
`,
	"hoses/std-1-b.yaml": "id: std-1-b\nname: hose of class B\nstandard: STD 1\nclass: B\n",
	"fluids/butanone.yaml": `id: butanone
name: Butanone
also: [MEK, "ethyl methyl ketone"]
form: liquid
cas: {value: 78-93-3, source: doc-a, standing: published}
un: {value: "1193", source: doc-a, standing: published}
compatibility:
  # groups are for the reader
  elastomers:
    - {m: FKM, rating: unsuitable, to_c: 40, source: doc-a, standing: published}

  metals:
    - {m: S31600, rating: suitable, to_c: 60, source: doc-a, standing: recalled}
    - {m: S31603, rating: limited, to_c: 60, source: doc-a, standing: recalled}
    - {m: S31600, rating: limited, to_c: 90, source: doc-a, standing: recalled}
bars:
  - {contains: [copper], regime: law 1, why: invented, source: doc-a, standing: published}
hazards:
  flammable: {value: true, source: doc-a, standing: published}
`,
	"fluids/nitrogen.yaml": "id: nitrogen\nname: Nitrogen\nform: compressed-gas\nservices: [inert-gas]\n",
	"fluids/steam.yaml":    "id: steam\nname: Steam\nform: vapour\nservices: [steam]\nproperties_of: butanone\nforbidden_pad_gases: [{id: moist-gas, why: invented, standing: practice}]\n",
}

// with returns the fixture with some files changed; an empty text removes the file.
func with(changes map[string]string) fstest.MapFS {
	files := maps.Clone(fixture)
	maps.Copy(files, changes)
	fsys := fstest.MapFS{}
	for path, text := range files {
		if text != "" {
			fsys[path] = &fstest.MapFile{Data: []byte(text)}
		}
	}
	return fsys
}

// edited returns the fixture with one text of one file replaced.
func edited(t *testing.T, path, old, new string) fstest.MapFS {
	t.Helper()
	require.Contains(t, fixture[path], old)
	return with(map[string]string{path: strings.Replace(fixture[path], old, new, 1)})
}

func small(t *testing.T, changes map[string]string) *Catalog {
	t.Helper()
	fsys := with(changes)
	return open(fsys, indexOf(fsys))
}
