package facts_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// base is an invented line: nitrogen through a regulator onto a tote of butanone, and butanone by hose to a tank.
const base = `line: T-1
as_of: 2026-11-25
regimes: [29 CFR 1910.106]
site: {lowest: 0 °C, highest: 40 °C, sun: shaded}
fluids:
  product: {fluid: butanone, concentration: 100 %, temperature: {lowest: 10 °C, highest: 40 °C}}
  pad: {fluid: nitrogen, dryness: dry, oil_free: yes}
vessels:
  tote:
    filled: 60 %
    rated: 10 bar(g)
    evidence: plate
    vent: closed
    material: S31603
    points:
      gas: {standard: thread-g, size: 1/2 in, gender: male}
      liquid: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF}
  tank:
    rated: 1 bar(g)
    evidence: plate
    vent: open
    material: S31603
    points:
      fill: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF}
runs:
  gas:
    carries: [pad]
    source: {cylinder: 200 bar(g)}
    to: {vessel: tote, inlet: gas}
    parts:
      - {id: PR1, kind: regulator, set: 3 bar(g), lock_up: 10 %, inlet_rated: 250 bar(g), flow_coefficient: Cv 0.06, rated: 20 bar(g), evidence: e, material: S31603}
      - {id: T1, kind: fitting, rated: 50 bar(g), evidence: e, material: S31603}
      - {id: RV1, kind: relief, set: 6 bar(g), area: 50 mm2, kdr: 0.7, rated: 40 bar(g), evidence: e, material: S31603}
      - {id: CV1, kind: check-valve, rated: 40 bar(g), evidence: e, material: S31603}
      - {id: F1, kind: fitting, rated: 50 bar(g), evidence: e, material: S31603}
  liquid:
    carries: [product, pad]
    source: {vessel: tote, outlet: liquid, head: 1 m}
    to: {vessel: tank, inlet: fill}
    parts:
      - id: H1
        kind: hose
        class: en-12115-sd
        edition: "2021"
        size: DN 50
        layers: {liner: PTFE, reinforcement: PET-FIBRE, cover: EPDM}
        inlet: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF, material: S31603, seal: {kind: ptfe-expanded, size: NPS 2, material: PTFE}}
        outlet: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF, material: S31603, seal: {kind: ptfe-expanded, size: NPS 2, material: PTFE}}
`

// edited is the base sheet with pairs of old and new text; each old text must be there.
func edited(t require.TestingT, edits ...string) string {
	text := base
	for i := 0; i < len(edits); i += 2 {
		require.Contains(t, text, edits[i])
		text = strings.ReplaceAll(text, edits[i], edits[i+1])
	}
	return text
}

func build(t require.TestingT, edits ...string) *facts.Facts { return of(t, edited(t, edits...)) }

var cat = catalog.Open()

// of works out the facts of one sheet. Its text must be a sheet, and all its names known.
func of(t require.TestingT, text string) *facts.Facts {
	s, err := sheet.Parse("t.yaml", []byte(text))
	require.NoError(t, err)
	l, err := resolve.Resolve(s, cat, resolve.Options{AsOf: units.Date{Days: 20782}})
	require.NoError(t, err)
	f, err := facts.Build(l, cat)
	require.NoError(t, err)
	return f
}

func asJSON(t require.TestingT, f *facts.Facts) string {
	text, err := json.Marshal(f)
	require.NoError(t, err)
	return string(text)
}

// demand is the capacity of the item against ordinary operation, or against the event named behind it.
func capacity(t require.TestingT, f *facts.Facts, id string) facts.Capacity {
	i := slices.IndexFunc(f.Capacities, func(c facts.Capacity) bool { return c.ID == id })
	require.GreaterOrEqual(t, i, 0, "no capacity %q among %v", id, capacityIDs(f))
	return f.Capacities[i]
}

func capacityIDs(f *facts.Facts) (ids []string) {
	for _, c := range f.Capacities {
		ids = append(ids, c.ID)
	}
	return ids
}

// find is the one entry with the id.
func find[T any](t require.TestingT, all []T, id string, of func(T) string) T {
	i := slices.IndexFunc(all, func(x T) bool { return of(x) == id })
	require.GreaterOrEqual(t, i, 0, "no %q among %+v", id, all)
	return all[i]
}

func joint(t require.TestingT, f *facts.Facts, id string) facts.Joint {
	return find(t, f.Joints, id, func(j facts.Joint) string { return j.ID })
}

func pair(t require.TestingT, f *facts.Facts, id string) facts.Pair {
	all := slices.Concat(f.Pairs.Unsuitable, f.Pairs.Limited, f.Pairs.Suitable, f.Pairs.Unlisted)
	return find(t, all, id, func(p facts.Pair) string { return p.ID })
}

func hose(t require.TestingT, f *facts.Facts, id string) facts.Hose {
	return find(t, f.Hoses, id, func(h facts.Hose) string { return h.ID })
}

// why is the reason noted for a missing fact.
func why(f *facts.Facts, subject, fact string) string {
	for _, u := range f.Unknowns {
		if u.Subject == subject && u.Fact == fact {
			return u.Why
		}
	}
	return ""
}

func TestBaseIsAsExpected(t *testing.T) {
	f := build(t)
	require.Equal(t, "fits", joint(t, f, "tote.liquid to H1.inlet").Mate)
	require.NotEmpty(t, f.Capacities)
	_, err := facts.Read([]byte(asJSON(t, f)))
	require.NoError(t, err, "what is built can be read back")
}
