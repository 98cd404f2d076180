package facts

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func lineWith() *Facts {
	return &Facts{
		Line: Line{ID: "L1", Regimes: []string{"29 CFR 1910.111"}, Toxic: true},
		Hoses: []Hose{
			{ID: "H1", Ammonia: true, Medium: "gas", RatedKPa: Know(0), Defects: []string{"kinked"}},
			{ID: "H2", Medium: "liquid", Class: "en12115"},
		},
		Pairs:    Pairs{Unsuitable: []Pair{{ID: "P1", Rating: "unsuitable"}}, Unlisted: []Pair{{ID: "P2"}}},
		Unknowns: []Unknown{{Subject: "H2", Fact: "hoses.rated_kpa", Why: "no mark", Ask: "look"}},
	}
}

func TestAnswers(t *testing.T) {
	for name, tc := range map[string]struct {
		subject              string
		scope, needs         []string
		judged, not, missing []string // missing as subject fact
	}{
		"all":               {"hoses", nil, nil, []string{"H1", "H2"}, nil, nil},
		"yes":               {"hoses", []string{"carries_ammonia"}, nil, []string{"H1"}, []string{"H2"}, nil},
		"no":                {"hoses", []string{"!carries_ammonia"}, nil, []string{"H2"}, []string{"H1"}, nil},
		"word":              {"hoses", []string{"medium=gas"}, nil, []string{"H1"}, []string{"H2"}, nil},
		"one of two words":  {"hoses", []string{"medium=gas|liquid"}, nil, []string{"H1", "H2"}, nil, nil},
		"not the word":      {"hoses", []string{"!medium=gas"}, nil, []string{"H2"}, []string{"H1"}, nil},
		"in a list":         {"hoses", []string{"defects=kinked|leaking"}, nil, []string{"H1"}, []string{"H2"}, nil},
		"regime":            {"hoses", []string{"regime=29 CFR 1910.111"}, nil, []string{"H1", "H2"}, nil, nil},
		"other regime":      {"hoses", []string{"regime=33 CFR 154.500"}, nil, nil, []string{"H1", "H2"}, nil},
		"fact of the line":  {"hoses", []string{"line.carries_toxic"}, nil, []string{"H1", "H2"}, nil, nil},
		"all must hold":     {"hoses", []string{"carries_ammonia", "medium=liquid"}, nil, nil, []string{"H1", "H2"}, nil},
		"known zero":        {"hoses", nil, []string{"hoses.rated_kpa"}, []string{"H1"}, nil, []string{"H2 hoses.rated_kpa"}},
		"known word":        {"hoses", nil, []string{"hoses.class"}, []string{"H2"}, nil, []string{"H1 hoses.class"}},
		"out of scope":      {"hoses", []string{"carries_ammonia"}, []string{"hoses.rated_kpa"}, []string{"H1"}, []string{"H2"}, nil},
		"two missing":       {"hoses", []string{"medium=liquid"}, []string{"hoses.rated_kpa", "hoses.age_days"}, nil, []string{"H1"}, []string{"H2 hoses.rated_kpa", "H2 hoses.age_days"}},
		"line":              {"line", []string{"carries_toxic"}, []string{"line.attended"}, nil, nil, []string{"line line.attended"}},
		"need of the line":  {"hoses", []string{"medium=gas"}, []string{"line.attended"}, nil, []string{"H2"}, []string{"line line.attended"}},
		"pairs, all groups": {"pairs", nil, []string{"pairs.rating"}, []string{"P1"}, nil, []string{"P2 pairs.rating"}},
		"none there":        {"seals", nil, []string{"seals.kind"}, nil, nil, nil},
	} {
		t.Run(name, func(t *testing.T) {
			q, err := NewQuestion(tc.subject, tc.scope, tc.needs)
			require.NoError(t, err)
			a := lineWith().Answers([]*Question{q})[0]
			assert.Equal(t, tc.judged, a.Judged)
			assert.Equal(t, tc.not, a.NotApplicable)
			var missing []string
			for _, u := range a.Missing {
				missing = append(missing, u.Subject+" "+u.Fact)
				assert.NotEmpty(t, u.Why)
			}
			assert.Equal(t, tc.missing, missing)
		})
	}
}

func TestWhyItIsMissing(t *testing.T) {
	q, err := NewQuestion("hoses", []string{"medium=liquid"}, []string{"hoses.rated_kpa", "hoses.readable"})
	require.NoError(t, err)
	a := lineWith().Answers([]*Question{q})[0]
	assert.Equal(t, []string{"H2"}, a.Open, "once, however much is missing")
	assert.Equal(t, []Unknown{
		{"H2", "hoses.rated_kpa", "no mark", "look"},
		{"H2", "hoses.readable", "not stated", "parts.*.readable: can the marks be read"},
	}, a.Missing)
}

// TestEverySubjectIsCounted: whatever the facts, each subject is in exactly one list; removing a needed fact takes it out
// of those judged and never changes the scope.
func TestEverySubjectIsCounted(t *testing.T) {
	q, err := NewQuestion("hoses", []string{"carries_gas", "medium=gas|water|steam"}, []string{"hoses.rated_kpa", "line.attended"})
	require.NoError(t, err)
	rapid.Check(t, func(t *rapid.T) {
		f := Any(func(n int) int { return rapid.IntRange(0, n-1).Draw(t, "choice") }, []string{"a", "b"})
		a := f.Answers([]*Question{q})[0]
		all := slices.Concat(a.Judged, a.NotApplicable, a.Open)
		slices.Sort(all)
		assert.Equal(t, f.Subjects("hoses"), slices.Compact(all))
		f.Line.Attended = Bool{}
		less := f.Answers([]*Question{q})[0]
		assert.Empty(t, less.Judged)
		assert.Equal(t, a.NotApplicable, less.NotApplicable)
	})
}

func TestQuestionRefuses(t *testing.T) {
	for name, tc := range map[string]struct {
		subject      string
		scope, needs []string
		want         string
	}{
		"subject":             {"pipes", nil, nil, "use one of bars, capacities"},
		"unknowns":            {"unknowns", nil, nil, "not a collection"},
		"no collection":       {"schema", nil, nil, "not a collection"},
		"scope":               {"hoses", []string{"carries_amonia"}, nil, `no fact "carries_amonia"`},
		"scope of the line":   {"hoses", []string{"line.x"}, nil, `Line has no fact "x"`},
		"scope maybe missing": {"hoses", []string{"readable"}, nil, "may be unknown"},
		"word without choice": {"hoses", []string{"medium"}, nil, "write \"medium=word|word\""},
		"choice of yes or no": {"hoses", []string{"carries_gas=true"}, nil, "is not a word"},
		"impossible word":     {"hoses", []string{"medium=gas|fluid"}, nil, `never "fluid"`},
		"need":                {"hoses", nil, []string{"hoses.rated"}, "is not a fact: hoses has class"},
		"need always known":   {"hoses", nil, []string{"hoses.medium"}, "always known"},
		"need of another":     {"hoses", nil, []string{"joints.size"}, "not a fact of hoses or of line"},
		"need without dot":    {"hoses", nil, []string{"rated_kpa"}, "not a fact of hoses or of line"},
		"two at once":         {"hoses", []string{"x"}, []string{"y"}, `"x"`},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := NewQuestion(tc.subject, tc.scope, tc.needs)
			require.ErrorContains(t, err, tc.want)
		})
	}
	_, err := NewQuestion("hoses", []string{"x"}, []string{"y"})
	require.ErrorContains(t, err, `"y"`)
}

func TestFind(t *testing.T) {
	f, ok := Find("pairs", "rating")
	require.True(t, ok)
	assert.True(t, f.Optional && f.Word && !f.Number)
	assert.Equal(t, []string{"suitable", "limited", "unsuitable"}, f.Words)
	f, ok = Find("hoses", "age_days")
	assert.True(t, ok && f.Number && f.Optional)
	_, ok = Find("hoses", "AgeDays")
	assert.False(t, ok)
	_, ok = Find("pipes", "id")
	assert.False(t, ok)
	assert.NotContains(t, Collections(), "unknowns")
	assert.Len(t, Collections(), 30)
}
