package rules

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const tiny = "package rules.a.b\n\nreport contains {\"subject\": h.id} if {\n\tsome h in input.hoses\n\th.age_days > 3\n}\n"

// TestHarnessSeesFaults: what runs the tests of the rules must itself be able to fail.
func TestHarnessSeesFaults(t *testing.T) {
	table := func(cases string) string {
		return "package rules.a.b_test\n\nimport data.rules.a.b\n\ntest_report[note] if {\n\tsome note, tc in " + cases +
			"\n\tgot := b.report with input as {\"hoses\": [{\"id\": \"H\", \"age_days\": tc[0]}]}\n\tcount(got) == tc[1]\n}\n"
	}
	for name, tc := range map[string]struct {
		tests                     string
		notes, failing, uncovered int
	}{
		"good":            {table(`{"at": [3, 0], "past": [4, 1]}`), 2, 0, 0},
		"one note false":  {table(`{"at": [3, 1], "past": [4, 1]}`), 2, 1, 0},
		"never fires":     {table(`{"at": [3, 0], "below": [2, 0]}`), 2, 0, 1},
		"no tests at all": {"package rules.a.b_test\n", 0, 0, 3},
	} {
		t.Run(name, func(t *testing.T) {
			fsys := fstest.MapFS{"a/b/rule.rego": {Data: []byte(tiny)}, "a/b/rule_test.rego": {Data: []byte(tc.tests)}}
			results, report := runTests(t, fsys, "a/b")
			notes, failing := 0, 0
			for _, r := range results {
				for _, sub := range r.SubResults {
					notes++
					if sub.Fail {
						failing++
					}
				}
			}
			assert.Equal(t, tc.notes, notes)
			assert.Equal(t, tc.failing, failing)
			assert.Len(t, unreached(report), tc.uncovered)
		})
	}
}

func TestMisnamedTest(t *testing.T) {
	m, err := parse(Module{"a/b/rule_test.rego", "package rules.a.b_test\n\ntest_a if true\n\n_help := 1\n\ntets_b if true\n"}, false)
	require.NoError(t, err)
	assert.Equal(t, []string{"a/b/rule_test.rego:7: tets_b is never run: name it test_tets_b or _tets_b"}, misnamed("a/b/rule_test.rego", m))
}
