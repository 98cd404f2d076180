package report

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func assertWidth(t *testing.T, text string, width int) {
	t.Helper()
	for _, line := range strings.Split(text, "\n") {
		assert.LessOrEqual(t, runes(line), width, line)
	}
}

func TestNoLineIsWiderThanAsked(t *testing.T) {
	for name, v := range samples() {
		for _, width := range []int{60, 72, 100, 140} {
			t.Log(name, width)
			assertWidth(t, written(t, Text, v, Options{Width: width}), width)
		}
		assert.Equal(t, written(t, Text, v, Options{Width: 100}), written(t, Text, v, Options{Width: -1}), "0 or less is 100")
		assert.Equal(t, written(t, Text, v, Options{Width: 40}), written(t, Text, v, Options{Width: 7}), "never below 40")
	}
}

// Terminal codes have the form ESC [ numbers m: ECMA-48, 5th edition 1991, 8.3.117 (recalled).
var codes = regexp.MustCompile("\x1b\\[[0-9;]*m")

func TestColourOnlyRepeatsWhatTheWordsSay(t *testing.T) {
	for name, v := range samples() {
		for _, width := range []int{60, 100} {
			with := written(t, Text, v, Options{Width: width, Colour: true})
			without := written(t, Text, v, Options{Width: width})
			assert.Equal(t, without, codes.ReplaceAllString(with, ""), name)
			assert.NotContains(t, without, "\x1b")
			assert.Contains(t, with, wordStyle[v.Word]+capitals(v.Word)+plainStyle)
			for _, line := range strings.Split(with, "\n") {
				assert.Equal(t, strings.Count(line, plainStyle)*2, len(codes.FindAllString(line, -1)), "every colour ends on its line")
			}
		}
	}
}

// phrase draws words of plain, wide-coded and long letters, with spaces that come in runs.
func phrase(t *rapid.T, name string) string {
	return rapid.StringMatching(`([a-z°—é\x{00a0}]{1,30} {0,3}){0,12}`).Draw(t, name)
}

func TestWrapLosesNoWordAndKeepsTheWidth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, width := phrase(t, "text"), rapid.IntRange(1, 60).Draw(t, "width")
		first, rest := rapid.SampledFrom([]string{"", "- ", "Basis: "}).Draw(t, "first"), "  "
		lines := wrap(first, rest, text, width)
		var got []string
		for i, line := range lines {
			prefix := rest
			if i == 0 {
				prefix = first
			}
			body, ok := strings.CutPrefix(line, prefix)
			if !ok && line != strings.TrimRight(prefix, " ") {
				t.Fatalf("line %q does not start with %q", line, prefix)
			}
			if ok && runes(line) > width && len(words(body)) > 1 {
				t.Fatalf("line %q is wider than %d", line, width)
			}
			if ok {
				got = append(got, words(body)...)
			}
			if next := i + 1; ok && next < len(lines) && runes(line)+1+runes(words(lines[next])[0]) <= width {
				t.Fatalf("the first word of %q had room in %q", lines[next], line)
			}
		}
		if strings.Join(got, " ") != strings.Join(words(text), " ") {
			t.Fatalf("words lost: %q of %q", got, text)
		}
	})
}

func TestTablesLoseNoWordAndKeepTheWidth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := rapid.IntRange(10, 90).Draw(t, "width")
		var rows [][]string
		longest := 0
		letters := map[rune]int{}
		for range rapid.IntRange(1, 5).Draw(t, "rows") {
			cells := []string{phrase(t, "a"), phrase(t, "b"), phrase(t, "c")}
			rows = append(rows, cells)
			for _, word := range words(strings.Join(cells, " ")) {
				longest = max(longest, runes(word))
				for _, r := range word {
					letters[r]++
				}
			}
		}
		for _, line := range columns([]string{"1", "2", "3"}, rows, width) {
			if runes(strings.TrimRight(line, " ")) > max(width, longest+len("- 1: ")) {
				t.Fatalf("line %q is wider than %d", line, width)
			}
			for _, r := range line {
				letters[r]--
			}
		}
		for r, left := range letters {
			if left != 0 && !strings.ContainsRune("123- :", r) {
				t.Fatalf("%d of the letter %q lost", left, r)
			}
		}
	})
}

func TestTableGivesUpColumnsWhenWordsDoNotFit(t *testing.T) {
	rows := [][]string{{"H1", "", "conductivity"}, {"H2", "", "reinforcement of polyester"}}
	head := []string{"Part", "Never", "Missing"}
	assert.Equal(t, []string{"Part  Missing", "----  -------------", "H1    conductivity", "H2    reinforcement", "      of polyester"}, columns(head, rows, 19))
	assert.Equal(t, []string{"- Part: H1", "  Missing:", "    conductivity", "- Part: H2", "  Missing:", "    reinforcement", "    of polyester"}, columns(head, rows, 17))
}

func TestNumberAndUnitStayTogether(t *testing.T) {
	v := conditionalLine()
	v.Findings[0].Need = "a written statement of the maker that is not older than a year"
	for width := 40; width < 110; width++ {
		text := written(t, Text, v, Options{Width: width})
		assertWidth(t, text, width)
		for _, whole := range []string{"have 350 days", "margin +15 days", "need 3.6 bar(g)"} {
			require.Contains(t, text, whole, width)
		}
		assert.Contains(t, strings.Join(strings.Fields(text), " "), "need "+v.Findings[0].Need)
	}
}

func TestMeasuresStandBelowEachOther(t *testing.T) {
	text := written(t, Text, unfitLine(), Options{})
	var at []int
	for _, line := range strings.Split(text, "\n") {
		if strings.HasPrefix(line, "      have") {
			at = append(at, strings.Index(line, "need"), strings.Index(line, "margin"))
		}
	}
	assert.Len(t, at, 8, "four parts, each with need and margin")
	for i := range at {
		assert.Equal(t, at[i%2], at[i])
	}
}
