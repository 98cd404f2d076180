package sheet

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestProblemLine(t *testing.T) {
	p := Problem{"line.yaml", 14, 9, "runs.liquid.parts[2].size", "wrong", "write DN 25"}
	assert.EqualError(t, p, "line.yaml:14:9: runs.liquid.parts[2].size: wrong; write DN 25")
	p.Hint, p.Path = "", ""
	assert.EqualError(t, p, "line.yaml:14:9: wrong")
	p.Line = 0
	assert.EqualError(t, p, "line.yaml: wrong")
}

func TestProblemsAreSortedAndCut(t *testing.T) {
	for count, tail := range map[int]string{50: "", 51: "\nand 1 more", 60: "\nand 10 more"} {
		problems := faults(t, broken(t, "line: T-1\n", "line: T-1\n"+strings.Repeat("x: 1\n", count)))
		require.Len(t, problems, count)
		text := problems.Error()
		assert.Equal(t, 50, strings.Count(text, "unknown key"))
		assert.True(t, strings.HasPrefix(text, "t.yaml:2:1: x: unknown key"))
		assert.Equal(t, tail, text[strings.LastIndex(text, "evidence")+len("evidence"):])
	}
}

// Faults of the walk and of the checks after it come in one list, by position.
func TestAllFaultsAtOnce(t *testing.T) {
	text := strings.NewReplacer("[product]", "[prodct]", "to: tank", "to: tonk", "kind: hose", "kind: hoze",
		"{fluid: butanone}", "{fluid: butanone, temperature: {lowest: 9 °C, highest: 8 °C}}", "size: DN 25\n", "size: 25\n").Replace(base)
	var lines []int
	for _, p := range faults(t, []byte(text)) {
		lines = append(lines, p.Line)
	}
	assert.Equal(t, []int{3, 11, 13, 16, 17}, lines)
}

func TestUnwrap(t *testing.T) {
	_, err := Parse("t.yaml", broken(t, "size: DN 25\n", "size: 25\n"))
	var problem Problem
	require.True(t, errors.As(err, &problem))
	assert.Equal(t, 17, problem.Line)
}

// Past a thousand faults the rest are counted without a search for near names.
func TestHopelessFile(t *testing.T) {
	problems := faults(t, broken(t, "line: T-1\n", "line: T-1\n"+strings.Repeat("titel: 1\n", 1200)))
	require.Len(t, problems, 1200)
	assert.Equal(t, "did you mean title?", problems[1000].Hint)
	assert.Equal(t, sheetTakes, problems[1001].Hint)
}
