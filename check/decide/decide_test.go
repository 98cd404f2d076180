package decide

import (
	"context"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

// Two things that hold pressure, one of them too weak. Invented figures.
func capacities() *facts.Facts {
	return &facts.Facts{
		Schema: facts.Schema,
		Capacities: []facts.Capacity{
			{ID: "C1", Part: "H1", What: "hose", Case: "duty", RatedKPa: facts.Know(1000), DemandKPa: facts.Know(1000)},
			{ID: "C2", Part: "V1", What: "body", Case: "lock-up", RatedKPa: facts.Know(999), DemandKPa: facts.Know(1000)},
			{ID: "C3", Part: "V2", What: "body", Case: "duty", DemandKPa: facts.Know(1000)},
			{ID: "C4", Part: "V3", What: "body", Case: "duty"},
		},
		Unknowns: []facts.Unknown{{Subject: "C3", Fact: "capacities.rated_kpa", Why: "no plate", Ask: "read the plate"}},
	}
}

func TestFindingAndCoverage(t *testing.T) {
	e, set := builtin(t)
	d, err := e.Decide(context.Background(), capacities())
	require.NoError(t, err)
	assert.Equal(t, []Finding{{
		Rule: "pressure/rating_below_demand", Subject: "C2", Part: "V1", Case: "lock-up",
		Numbers: map[string]int64{"have_kpa": 999, "need_kpa": 1000}, Words: map[string]string{"what": "body"},
	}}, d.Findings)
	require.Len(t, d.Coverage, len(set.Index()))
	for i, c := range d.Coverage {
		assert.Equal(t, set.Index()[i].ID, c.Rule)
		if c.Rule != "pressure/rating_below_demand" {
			continue
		}
		assert.Equal(t, []string{"C1", "C2"}, c.Judged)
		assert.Empty(t, c.NotApplicable)
		require.Len(t, c.Unjudged, 3)
		assert.Equal(t, Missing{Subject: "C3", Fact: "capacities.rated_kpa", Why: "no plate", Ask: "read the plate"}, c.Unjudged[0])
		assert.Equal(t, "C4", c.Unjudged[1].Subject)
		assert.NotEmpty(t, c.Unjudged[2].Ask, "the fact itself says who can supply it")
	}
}

func TestScopeAndNeeds(t *testing.T) {
	e := engineOf(t, "package rules.a.b\nreport contains {\"subject\": h.id} if {\nsome h in input.hoses\nh.rated_kpa < 2000\nh.carries_ammonia\n}", "")
	f := ammonia()
	f.Hoses = append(f.Hoses, facts.Hose{ID: "H3", Ammonia: true})
	d, err := e.Decide(context.Background(), f)
	require.NoError(t, err)
	require.Len(t, d.Findings, 1)
	assert.Equal(t, "H1", d.Findings[0].Subject)
	require.Len(t, d.Coverage, 1)
	c := d.Coverage[0]
	assert.Equal(t, []string{"H1"}, c.Judged)
	assert.Equal(t, []string{"H2"}, c.NotApplicable)
	require.Len(t, c.Unjudged, 1)
	assert.Equal(t, "H3", c.Unjudged[0].Subject)
	assert.Equal(t, "hoses.rated_kpa", c.Unjudged[0].Fact)
}

// A rule may find something although a fact that it needs is not known: what is known may be bad enough.
func TestFindingOnWhatIsOpen(t *testing.T) {
	e := engineOf(t, "package rules.a.b\n"+`report contains {"subject": "H1"}`, "")
	f := ammonia()
	f.Hoses[0].RatedKPa = facts.Int{}
	d, err := e.Decide(context.Background(), f)
	require.NoError(t, err)
	assert.Len(t, d.Findings, 1)
	assert.Len(t, d.Coverage[0].Unjudged, 1)
}

func TestOrder(t *testing.T) {
	e := &Engine{core: &core{rules: map[string]*rule{"z/stop": {rank: 0}, "a/cond": {rank: 1}, "b/cond": {rank: 1}, "a/note": {rank: 2}}}}
	want := []Finding{
		{Rule: "z/stop", Part: "A", Subject: "2"},
		{Rule: "z/stop", Part: "B", Subject: "1", Case: "a"},
		{Rule: "z/stop", Part: "B", Subject: "1", Case: "b"},
		{Rule: "z/stop", Part: "B", Subject: "2", Case: "a"},
		{Rule: "a/cond"}, {Rule: "b/cond"}, {Rule: "a/note"},
	}
	for i := range want {
		for j := range want {
			got := e.compare(want[i], want[j])
			assert.Equal(t, i < j, got < 0, "%v %v", want[i], want[j])
			assert.Equal(t, i == j, got == 0, "%v %v", want[i], want[j])
		}
	}
}

// TestSharedEngine: many at once get what one alone gets. Run with -race.
func TestSharedEngine(t *testing.T) {
	e, set := builtin(t)
	f := bad(set)
	want, err := e.Decide(context.Background(), f)
	require.NoError(t, err)
	require.NotEmpty(t, want.Findings)
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for range 5 {
				got, err := e.Decide(context.Background(), f)
				assert.NoError(t, err)
				assert.Equal(t, want, got)
			}
		})
	}
	wg.Wait()
}

func TestNewRefusesABadIndex(t *testing.T) {
	for name, r := range map[string]rules.Rule{
		"severity": {ID: "a/b", Severity: "fatal", Subject: "hoses"},
		"subject":  {ID: "a/b", Severity: "stop", Subject: "pipes"},
		"need":     {ID: "a/b", Severity: "stop", Subject: "hoses", Needs: []string{"hoses.rated"}},
	} {
		t.Run(name, func(t *testing.T) {
			require.ErrorContains(t, (&core{rules: map[string]*rule{}}).take([]rules.Rule{r}, nil), "a/b")
		})
	}
}
