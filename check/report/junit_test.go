package report

import (
	"bytes"
	"encoding/xml"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func junitOf(t *testing.T, vs ...*Verdict) junitSuites {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, junit(&b, vs...))
	require.True(t, strings.HasPrefix(b.String(), xml.Header))
	var all junitSuites
	require.NoError(t, xml.Unmarshal(b.Bytes(), &all))
	return all
}

// state is what a build server makes of a case.
func state(c junitCase) string {
	switch {
	case c.Failure != nil:
		return "failure " + c.Failure.Type
	case c.Error != nil:
		return "error"
	case c.Skipped != nil:
		return "skipped"
	}
	return "passed"
}

func states(s junitSuite) map[string]string {
	out := map[string]string{}
	for _, c := range s.Cases {
		out[c.Class+" "+c.Name] = state(c)
	}
	return out
}

func TestCasesSayWhatBecameOfEachSubject(t *testing.T) {
	assert.Equal(t, map[string]string{
		"pressure/demand_over_capacity H1":                                      "failure stop",
		"pressure/demand_over_capacity H2":                                      "failure stop",
		"pressure/demand_over_capacity V1":                                      "failure stop",
		"pressure/demand_over_capacity V12":                                     "failure stop",
		"inspection/hose_test_overdue H1":                                       "passed",
		"service/chlorine_wet product":                                          "skipped",
		"marking/colour_differs H1":                                             "passed",
		"service/nobody_attends KD-103":                                         "failure condition",
		"material/reinforcement_unsuited H1 reinforcement polyester in product": "failure stop",
		"material/reinforcement_unsuited H2 reinforcement polyester in product": "failure stop",
		"verdict/to_confirm ptfe in butanone up to 45 °C: resistant":            "skipped",
	}, states(junitOf(t, unfitLine()).Suites[0]))
	open := states(junitOf(t, unprovenLine()).Suites[0])
	for _, name := range []string{"static/no_bonding H1", "static/no_bonding product", "pressure/demand_over_capacity H2", "inspection/hose_test_due_soon H1"} {
		assert.Equal(t, "error", open[name], name)
	}
}

func TestCountsAreThoseOfTheCases(t *testing.T) {
	all := junitOf(t, unfitLine(), unprovenLine(), fitLine())
	require.Len(t, all.Suites, 3)
	total := map[string]int{}
	for _, s := range all.Suites {
		got := map[string]int{}
		for _, c := range s.Cases {
			got[strings.Fields(state(c))[0]]++
			total[strings.Fields(state(c))[0]]++
		}
		assert.Equal(t, []int{len(s.Cases), got["failure"], got["error"], got["skipped"]}, []int{s.Tests, s.Failures, s.Errors, s.Skipped}, s.Name)
	}
	assert.Equal(t, []int{total["failure"], total["error"], total["skipped"]}, []int{all.Failures, all.Errors, all.Skipped})
}

// A rule that found more than stands among the findings holds values to confirm: none of its subjects may pass unseen.
func TestAValueToConfirmDoesNotPass(t *testing.T) {
	v := conditionalLine()
	v.Judged = append(v.Judged, Judged{Rule: "record/value_not_confirmed", Severity: condition, Judged: []string{"ptfe in butanone"}, Found: 2})
	assert.Equal(t, "skipped", states(junitOf(t, v).Suites[0])["record/value_not_confirmed ptfe in butanone"])
}

func TestSeveralFindingsOnOneSubjectFailTogether(t *testing.T) {
	v := unfitLine()
	v.Findings[2].Rule, v.Findings[2].Subject = v.Findings[0].Rule, v.Findings[0].Subject // a stop beside a note
	for _, c := range junitOf(t, v).Suites[0].Cases {
		if c.Class == "marking/colour_differs" {
			assert.Equal(t, "failure stop", state(c))
			assert.Contains(t, c.Failure.Text, "green band")
			assert.Contains(t, c.Failure.Text, "H1 holds 8 bar(g)")
		}
	}
}
