package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// base is the smallest sheet in which every reference can be made; the tests break one thing in it.
const base = `line: T-1
fluids:
  product: {fluid: butanone}
vessels:
  drum:
    points:
      bung: {size: DN 25}
  tank: {}
runs:
  main:
    carries: [product]
    source: {vessel: drum, outlet: bung}
    to: tank
    parts:
      - id: H1
        kind: hose
        size: DN 25
`

// broken is the base sheet with one text replaced; the text must be there once.
func broken(t require.TestingT, old, with string) []byte {
	require.Equal(t, 1, strings.Count(base, old), "%q must stand once in the base sheet", old)
	return []byte(strings.Replace(base, old, with, 1))
}

func parse(t *testing.T, text string) *Line {
	t.Helper()
	line, err := Parse("t.yaml", []byte(text))
	require.NoError(t, err)
	return line
}

func faults(t require.TestingT, data []byte) Problems {
	line, err := Parse("t.yaml", data)
	require.Error(t, err)
	require.Nil(t, line)
	problems, ok := err.(Problems)
	require.True(t, ok, "any error is of type Problems")
	return problems
}

// faultCase breaks one text of the base sheet and wants every fault, exactly, as position, path and message.
type faultCase struct {
	name, old, with string
	want            []string
}

const (
	hoseTakes = "a hose takes id, kind, name, material, wetted, size, length, rated, evidence, lowest, highest, bonded, " +
		"inlet, outlet, class, edition, layers, bend, least_bend, burst, retention, tail, outside, clamp_least, clamp_most, vacuum, tag, assigned, marks, readable, specified_for, listed, made, tested, " +
		"test_interval, test_pressure, test_kind, inspected, life, electrical, resistance, resistance_tested, condition, restraint, lay, oxygen_clean"
	sheetTakes = "the keys here are line, title, as_of, regimes, site, fluids, vessels, runs, nearby, safeguards, change, evidence"
)

func checkFaults(t *testing.T, cases []faultCase) {
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, problem := range faults(t, broken(t, c.old, c.with)) {
				got = append(got, strings.TrimPrefix(problem.Error(), "t.yaml:"))
			}
			assert.Equal(t, c.want, got)
		})
	}
}
