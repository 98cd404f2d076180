package compare_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestInKind follows 29 CFR 1910.119(l)(1) (published, 2015 annual edition): a change of material, rating, class,
// connection, relief set, fluid or temperature range is no replacement in kind; a date or a mark is.
func TestInKind(t *testing.T) {
	for name, tc := range map[string]struct {
		edits  []string
		answer string
		about  string
	}{
		"material":            {[]string{"layers: {liner: PTFE, reinforcement: PET-FIBRE, cover: EPDM}", "layers: {liner: FEP, reinforcement: PET-FIBRE, cover: EPDM}"}, "not in kind", "material"},
		"rating":              {[]string{"rated: 65 bar(g)", "rated: 64 bar(g)"}, "not in kind", "rating"},
		"class":               {[]string{"class: PN 16", "class: PN 40"}, "not in kind", "class"},
		"connection":          {[]string{"standard: cam-groove-en-14420-7", "standard: tank-truck-en-14420-6"}, "not in kind", "connection"},
		"seal":                {[]string{"kind: ptfe-filled", "kind: ptfe-expanded"}, "not in kind", "seal"},
		"fluid":               {[]string{"fluid: toluene\n    role", "fluid: xylene\n    role"}, "not in kind", "fluid"},
		"temperature":         {[]string{"      highest: 40 °C", "      highest: 41 °C"}, "not in kind", "temperature"},
		"setting":             {[]string{"set: 3 bar(g)", "set: 4 bar(g)"}, "not in kind", "setting"},
		"test date only":      {[]string{"tested: 2026-02-10", "tested: 2026-11-01"}, "no change of the design", ""},
		"tag only":            {[]string{"tag: H-0417", "tag: H-0999"}, "in kind", ""},
		"newly stated":        {[]string{"        bend: 400 mm\n", "        bend: 400 mm\n        least_bend: 200 mm\n"}, "not shown to be in kind", "least_bend of hose H2 stands on one sheet only"},
		"not stated any more": {[]string{"        bend: 200 mm\n", ""}, "not shown to be in kind", "bend of hose H1 stands on one sheet only"},
	} {
		t.Run(name, func(t *testing.T) {
			k := review(t, text(t, "toluene-yard"), text(t, "toluene-yard", tc.edits...)).Kind
			assert.Equal(t, tc.answer, k.Answer)
			if tc.about == "" {
				assert.Empty(t, k.Because)
			} else {
				assert.Equal(t, []string{tc.about}, k.Because)
			}
		})
	}
	relief := func(set string) string {
		return text(t, "toluene-yard-corrected", "      set: 6 bar(g)", "      set: "+set)
	}
	assert.Equal(t, []string{"relief"}, review(t, relief("6 bar(g)"), relief("5.9 bar(g)")).Kind.Because, "relief set")
}

// TestSwapUnderUnknowns: nobody can call a swap in kind when neither sheet says what the part is rated for.
func TestSwapUnderUnknowns(t *testing.T) {
	bare := []string{"        rated: 10 bar(g)\n", ""}
	r := review(t, text(t, "toluene-yard", bare...), text(t, "toluene-yard", append(bare, "tag: H-0523", "tag: H-0601")...))
	assert.Equal(t, "not shown to be in kind", r.Kind.Answer)
	assert.Equal(t, []string{"rated of hose H2 stands on neither sheet"}, r.Kind.Because)
}

// TestSheetDisagrees: a sheet that calls its change in kind is held against the comparison.
func TestSheetDisagrees(t *testing.T) {
	claim := "\nchange: {what: a new hose, in_kind: yes}\n"
	r := review(t, text(t, "toluene-yard"), text(t, "toluene-yard", "rated: 65 bar(g)", "rated: 50 bar(g)")+claim)
	assert.Equal(t, "the new sheet calls the change in kind, but: rating", r.Kind.Conflict)
	r = review(t, text(t, "toluene-yard"), text(t, "toluene-yard", "tag: H-0417", "tag: H-0999")+claim)
	assert.Empty(t, r.Kind.Conflict)
}

// TestTemporary: the end of a temporary change against the day the new sheet is judged for, 2026-11-25.
func TestTemporary(t *testing.T) {
	for until, want := range map[string]struct {
		left int
		says string
	}{
		"2026-11-24": {-1, "ended on 2026-11-24, 1 day before 2026-11-25"},
		"2026-11-25": {0, "temporary until 2026-11-25, 0 days"},
		"2026-12-05": {10, "temporary until 2026-12-05, 10 days"},
	} {
		change := "\nchange: {record: MOC-17, what: a weaker hose, in_kind: no, authorised: 2026-11-01, until: " + until + "}\n"
		r := review(t, text(t, "toluene-yard-corrected"), text(t, "toluene-yard-corrected", "rated: 65 bar(g)", "rated: 50 bar(g)")+change)
		require.NotNil(t, r.Time)
		assert.Equal(t, want.left, r.Time.DaysLeft)
		assert.Contains(t, r.Time.Says, want.says)
		assert.Equal(t, want.left < 0, strings.Contains(strings.Join(r.Worse, "\n"), "past its end date"))
		require.Len(t, r.Record, 10)
		assert.Equal(t, "MOC-17, a weaker hose", r.Record[0].Holds)
		assert.True(t, r.Record[4].Done)
		assert.Equal(t, "2026-11-01", r.Record[5].Holds)
	}
}
