package facts_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"lineworthy/check/facts"
)

// TestBolts: holes by ASME B16.5 (published) and EN 1092-1 (restated). The count is asked for where what gets out is toxic,
// liquefied or deeply cold.
func TestBolts(t *testing.T) {
	ends := func(text string) []string {
		return []string{hoseEnd, "outlet: {" + text + ", material: S31603,", tankPoint, "fill: {" + text + "}"}
	}
	four := `standard: flange-asme-b16-5, size: NPS 4, class: "150", facing: RF`
	toxic := []string{"fluid: butanone, concentration: 100 %", "fluid: ammonia"}
	for name, tc := range map[string]struct {
		edits       []string
		asked       bool
		bolts, hole facts.Int
	}{
		"butanone, not stated":       {ends(four), false, facts.Int{}, facts.Int{}},
		"butanone, stated":           {ends(four + ", bolts: 6"), true, facts.Know(6), facts.Know(8)},
		"ammonia":                    {append(ends(four), toxic...), true, facts.Int{}, facts.Know(8)},
		"class 150 NPS 2":            {ends(`standard: flange-asme-b16-5, size: NPS 2, class: "150", facing: RF, bolts: 4`), true, facts.Know(4), facts.Know(4)},
		"PN 16 DN 80":                {ends("standard: flange-en-1092-1, size: DN 80, class: PN 16, facing: B1, bolts: 8"), true, facts.Know(8), facts.Know(8)},
		"no such drilling":           {append(ends(`standard: flange-asme-b16-5, size: NPS 4, class: "99", facing: RF`), toxic...), true, facts.Int{}, facts.Int{}},
		"no flange":                  {append(ends("standard: cam-groove-en-14420-7, size: DN 50"), toxic...), false, facts.Int{}, facts.Int{}},
		"the lower of two counts":    {[]string{hoseEnd, "outlet: {" + four + ", bolts: 8,", tankPoint, "fill: {" + four + ", bolts: 7}"}, true, facts.Know(7), facts.Know(8)},
		"the higher number of holes": {[]string{hoseEnd, "outlet: {" + four + ",", tankPoint, `fill: {standard: flange-asme-b16-5, size: NPS 6, class: "300", facing: RF, bolts: 8}`}, true, facts.Know(8), facts.Know(12)},
	} {
		t.Run(name, func(t *testing.T) {
			j := joint(t, build(t, tc.edits...), lastJoint)
			assert.Equal(t, []any{tc.asked, tc.bolts, tc.hole}, []any{j.BoltsWant, j.Bolts, j.Holes})
		})
	}
	f := build(t, ends(four)...)
	assert.True(t, joint(t, f, lastJoint).ClassBolt)
	assert.True(t, joint(t, f, lastJoint).AtHose)
	assert.False(t, joint(t, f, "F1.outlet to tote.gas").AtHose)
}
