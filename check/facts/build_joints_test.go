package facts_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

const (
	tankPoint = `fill: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF}`
	hoseEnd   = `outlet: {standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF, material: S31603,`
	lastJoint = "H1.outlet to tank.fill"
)

// between builds the base line with the last joint made of the two ends, without seal unless one is written.
func between(t *testing.T, hoseSide, tankSide string) facts.Joint {
	return joint(t, build(t, hoseEnd, "outlet: {"+hoseSide+",", tankPoint, "fill: {"+tankSide+"}"), lastJoint)
}

// TestLookAlikes: Class and PN flanges are no designed pair; 26 of the pairs can be bolted up (computed from the drilling
// tables of ASME B16.5 and EN 1092-1). Whatever the size, the answer is a stop.
func TestLookAlikes(t *testing.T) {
	pairs, err := cat.Table("look-alike-flanges")
	if !assert.NoError(t, err) {
		return
	}
	n := 0
	for _, row := range pairs.Rows {
		for _, pn := range strings.Split(strings.ReplaceAll(row.Cells[3], "PN ", "PN"), " ") {
			n++
			a := fmt.Sprintf("standard: flange-asme-b16-5, size: %s, class: %q, facing: RF, material: CS", row.Cells[0], row.Cells[1])
			b := fmt.Sprintf("standard: flange-en-1092-1, size: %s, class: %s, facing: B1, material: CS", row.Cells[2], pn)
			for _, j := range []facts.Joint{between(t, a, b), between(t, b, a)} {
				assert.Equal(t, "stop", j.Mate, "%s and %s", a, b)
				assert.True(t, j.LookAlike)
				assert.NotEmpty(t, j.Why)
				assert.Equal(t, "same", j.Size, "the refusal is said once")
			}
		}
	}
	assert.GreaterOrEqual(t, n, 26)
}

// TestMates by the worked checks of the mating table, from either side.
func TestMates(t *testing.T) {
	for name, tc := range map[string][3]string{
		"cam groove, two standards":         {"standard: cam-groove-en-14420-7, size: DN 50, gender: male", "standard: cam-groove-aa-59326, size: 2 in, gender: female", "fits"},
		"NPT with G 3/4":                    {"standard: thread-npt, size: 3/4 in, gender: male", "standard: thread-g, size: 3/4 in, gender: female", "stop"},
		"37 with 45 degree flare":           {"standard: flare-37, size: -8, gender: male", "standard: flare-45, size: -8, gender: female", "stop"},
		"24 degree cone, light with heavy":  {"standard: cone-24-light, size: 8 mm, gender: male", "standard: cone-24-heavy, size: 6 mm, gender: female", "stop"},
		"cam groove with tank truck":        {"standard: cam-groove-en-14420-7, size: DN 50, gender: male", "standard: tank-truck-en-14420-6, size: DN 50, gender: female", "no-fit"},
		"a pair in neither file is unknown": {"standard: cam-groove-en-14420-7, size: DN 50, gender: male", "standard: flange-en-1092-1, size: DN 50", ""},
	} {
		t.Run(name, func(t *testing.T) {
			assert.Equal(t, tc[2], between(t, tc[0], tc[1]).Mate)
			assert.Equal(t, tc[2], between(t, tc[1], tc[0]).Mate)
		})
	}
	f := build(t, hoseEnd, "outlet: {standard: cam-groove-en-14420-7, size: DN 50, gender: male,", tankPoint, "fill: {standard: flange-en-1092-1, size: DN 50}")
	assert.Contains(t, why(f, lastJoint, "joints.mate"), "is not a known pair")
	f = build(t, hoseEnd, "outlet: {", tankPoint, "fill: {standard: flange-en-1092-1, size: DN 50}")
	assert.Contains(t, why(f, lastJoint, "joints.mate"), "does not say what the outlet of H1 is")
}

// TestFit compares the two ends of a designed pair one by one.
func TestFit(t *testing.T) {
	asme := func(rest string) string { return "standard: flange-asme-b16-5" + rest }
	en := func(rest string) string { return "standard: flange-en-1092-1" + rest }
	cam := func(rest string) string { return "standard: cam-groove-en-14420-7" + rest }
	of := map[string]func(facts.Joint) string{
		"size":   func(j facts.Joint) string { return j.Size },
		"gender": func(j facts.Joint) string { return j.Gender },
		"hand":   func(j facts.Joint) string { return j.Hand },
		"class":  func(j facts.Joint) string { return j.Class },
		"facing": func(j facts.Joint) string { return j.Facing },
	}
	for _, tc := range []struct{ fact, a, b, want string }{
		{"size", asme(", size: NPS 2"), asme(", size: NPS 2"), "same"},
		{"size", asme(", size: NPS 2"), asme(", size: DN 50"), "same"},
		{"size", asme(", size: NPS 2"), asme(", size: NPS 3"), "differs"},
		{"size", asme(", size: NPS 2"), asme(", size: 2 in"), ""},
		{"size", asme(", size: NPS 2"), asme(""), ""},
		{"gender", asme(""), asme(""), "none"},
		{"gender", cam(", gender: male"), cam(", gender: female"), "opposite"},
		{"gender", cam(", gender: male"), cam(", gender: male"), "same"},
		{"gender", cam(", gender: male"), cam(""), ""},
		{"gender", cam(", gender: male"), cam(", gender: none"), ""},
		{"gender", cam(", gender: none"), cam(", gender: none"), ""},
		{"hand", "standard: thread-g, hand: right", "standard: thread-g, hand: left", "differs"},
		{"hand", "standard: thread-g, hand: left", "standard: thread-g, hand: left", "same"},
		{"hand", asme(""), asme(""), "same"},
		{"hand", asme(", hand: left"), asme(""), ""},
		{"class", en(", size: DN 50, class: PN 16"), en(", size: DN 50, class: PN16"), "same"},
		{"class", en(", size: DN 50, class: PN 16"), en(", size: DN 50, class: PN 40"), "drilling-same"}, // up to DN 80, EN 1092-1
		{"class", en(", size: DN 100, class: PN 16"), en(", size: DN 100, class: PN 40"), "differs"},
		{"class", en(", size: DN 50, class: PN 16"), en(", size: DN 50"), ""},
		{"class", asme(", size: NPS 3, class: \"300\""), asme(", size: NPS 3, class: \"600\""), "drilling-same"}, // ASME B16.5 to NPS 3
		{"class", asme(", size: NPS 2, class: \"150\""), asme(", size: NPS 2, class: Class 150"), "same"},
		{"class", cam(""), cam(""), "none"},
		{"facing", asme(", facing: RF"), asme(", facing: rf"), "same"},
		{"facing", asme(", facing: RF"), asme(", facing: FF"), "differs"},
		{"facing", asme(", facing: RF"), asme(""), ""},
		{"facing", asme(", facing: M"), asme(", facing: F"), "same"},
		{"facing", asme(", facing: M"), asme(", facing: M"), "differs"},
		{"facing", asme(", facing: T"), asme(", facing: G"), "same"},
		{"facing", en(", facing: C"), en(", facing: D"), "same"},
		{"facing", en(", facing: D"), en(", facing: D"), "differs"},
		{"facing", en(", facing: E"), en(", facing: F"), "same"},
		{"facing", en(", facing: F"), en(", facing: E"), "same"},
		{"facing", en(", facing: G"), en(", facing: H"), "same"},
		{"facing", en(", facing: H"), en(", facing: H"), "differs"},
		{"facing", cam(""), cam(""), "none"},
	} {
		assert.Equal(t, tc.want, of[tc.fact](between(t, tc.a, tc.b)), "%s of %s and %s", tc.fact, tc.a, tc.b)
		assert.Equal(t, tc.want, of[tc.fact](between(t, tc.b, tc.a)), "%s of %s and %s", tc.fact, tc.b, tc.a)
	}
}

func TestLocked(t *testing.T) {
	cam := "standard: cam-groove-en-14420-7, size: DN 50, gender: "
	for _, tc := range []struct {
		a, b string
		want facts.Bool
	}{
		{"", "", facts.Bool{}}, {", locked: yes", "", facts.Yes(true)}, {"", ", locked: yes", facts.Yes(true)},
		{", locked: no", "", facts.Yes(false)}, {", locked: yes", ", locked: no", facts.Yes(false)}, {", locked: no", ", locked: yes", facts.Yes(false)},
	} {
		j := between(t, cam+"male"+tc.a, cam+"female"+tc.b)
		assert.Equal(t, tc.want, j.Locked, tc)
		assert.True(t, j.NeedsLock)
	}
	assert.False(t, between(t, flangeEnd, flangeEnd).NeedsLock)
}

// TestOpenPoint: an open hatch at the far end is no joint; the word says nothing anywhere else.
func TestOpenPoint(t *testing.T) {
	j := between(t, flangeEnd, "open: yes, entry: dip-pipe")
	assert.True(t, j.Open)
	assert.Equal(t, facts.Know(0), j.SealCount)
	assert.Equal(t, "fits", j.Mate)
	f := build(t, "liquid: {standard: flange-asme-b16-5, size: NPS 2, class: \"150\", facing: RF}", "liquid: {open: yes}")
	j = joint(t, f, "tote.liquid to H1.inlet")
	assert.False(t, j.Open)
	assert.Empty(t, j.Mate)
}

// TestSeals: which seal, whether the standard takes it, and how many there are.
func TestSeals(t *testing.T) {
	seal := func(text string) (facts.Joint, []facts.Seal) {
		f := build(t, hoseEnd+" seal: {kind: ptfe-expanded, size: NPS 2, material: PTFE}", hoseEnd+" "+text)
		var of []facts.Seal
		for _, s := range f.Seals {
			if s.Joint == lastJoint {
				of = append(of, s)
			}
		}
		return joint(t, f, lastJoint), of
	}
	j, s := seal("seal: {kind: ptfe-expanded, size: NPS 2, material: PTFE}")
	assert.Equal(t, facts.Know(1), j.SealCount)
	assert.Equal(t, facts.Yes(true), j.NeedsSeal)
	s[0].PShare, s[0].TShare = facts.Int{}, facts.Int{} // TestHotAndHigh
	assert.Equal(t, facts.Seal{ID: lastJoint + " seal 1", Joint: lastJoint, Kind: "ptfe-expanded", KindFits: facts.Yes(true), Size: "same", Material: "PTFE"}, s[0])
	j, _ = seal("seal: none")
	assert.Equal(t, facts.Know(0), j.SealCount)
	j, _ = seal("locked: no")
	assert.False(t, j.SealCount.Known, "a seal nobody mentions is not a missing one, nor one that is there")
	j, s = seal("seal: [{kind: ptfe-expanded}, {kind: ptfe-expanded}]")
	assert.Equal(t, facts.Know(2), j.SealCount)
	assert.Equal(t, []string{"", "PTFE"}, []string{s[0].Size, s[0].Material}, "made of the one thing its kind is made of")
	_, s = seal("seal: {kind: coupling-gasket, size: NPS 3, material: EPDM}")
	assert.Equal(t, facts.Yes(false), s[0].KindFits)
	assert.Equal(t, "differs", s[0].Size)
}

// TestCylinderOutlets: the number is compared, and the gas must be in its list (CGA V-1, recalled).
func TestCylinderOutlets(t *testing.T) {
	at := func(gas, cylinder, regulator string) facts.Joint {
		f := build(t, "fluid: nitrogen, dryness: dry, oil_free: yes", "fluid: "+gas,
			"source: {cylinder: 200 bar(g)}", "source: {cylinder: 200 bar(g), end: {standard: cylinder-cga-v1, gender: female"+cylinder+"}}",
			"set: 3 bar(g),", "set: 3 bar(g), inlet: {standard: cylinder-cga-v1, gender: male"+regulator+"},")
		return joint(t, f, "source.source to PR1.inlet")
	}
	j := at("nitrogen", `, number: "580"`, `, number: "580"`)
	assert.Equal(t, []any{"same", facts.Yes(true), true, "same"}, []any{j.Number, j.GasListed, j.Cylinder, j.Size})
	assert.Equal(t, facts.Yes(false), at("oxygen", `, number: "580"`, `, number: "580"`).GasListed)
	assert.Equal(t, "differs", at("nitrogen", `, number: "580"`, `, number: "680"`).Number)
	assert.Empty(t, at("nitrogen", "", `, number: "580"`).Number)
	assert.False(t, at("nitrogen", "", "").GasListed.Known)
	assert.False(t, at("nitrogen", `, number: "99999"`, `, number: "99999"`).GasListed.Known)
}

// TestExcludedServices: EN 14420-7 leaves liquefied gas and steam out (scope, published).
func TestExcludedServices(t *testing.T) {
	cam := []string{hoseEnd, "outlet: {standard: cam-groove-en-14420-7, size: DN 50, gender: male,", tankPoint, "fill: {standard: cam-groove-en-14420-7, size: DN 50, gender: female}"}
	f := build(t, append(cam, "fluid: butanone, concentration: 100 %", "fluid: ammonia")...)
	assert.Equal(t, []string{"liquefied-gas"}, joint(t, f, lastJoint).Excluded)
	assert.Empty(t, joint(t, build(t, cam...), lastJoint).Excluded)
}
