package rules

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const coverageFile = "COVERAGE.md"

// lists are the lists of paragraphs, with their length: traps, the table of regimes, ammonia, LP-gas, road and rail,
// marine, oxygen and acetylene, process safety, standards, filling, dates, pressure tests and steaming out.
var lists = []struct {
	letter, heading string
	length          int
}{
	{"T", "Ten things commonly misread", 10},
	{"R", "One question, different numbers", 18},
	{"N", "Ammonia", 23},
	{"L", "LP-gas", 16},
	{"H", "Road and rail", 47},
	{"M", "Marine", 26},
	{"O", "Oxygen, acetylene and other compressed gas", 20},
	{"P", "Process safety and change", 12},
	{"C", "Standards with legal weight", 7},
	{"F", "Filling", 10},
	{"D", "Dates", 9},
	{"S", "Pressure tests and steaming out", 10},
}

// TestEveryParagraphIsListed: no row is missing, and each says what became of it.
func TestEveryParagraphIsListed(t *testing.T) {
	all, err := Coverage()
	require.NoError(t, err)
	var want, got []string
	for _, l := range lists {
		for n := range l.length {
			want = append(want, fmt.Sprintf("%s%d", l.letter, n+1))
		}
	}
	for _, p := range all {
		got = append(got, p.ID)
		assert.NotEmpty(t, p.Says, p.ID)
		assert.NotEmpty(t, p.Clause, p.ID)
		assert.Contains(t, standings, p.Standing, p.ID)
		assert.True(t, len(p.Rules) > 0 || p.OutOfScope != "", "%s: neither a rule nor a reason", p.ID)
	}
	assert.Equal(t, want, got)
}

// TestCoverageIsTrue: every rule named exists, and one of them cites the document, unless they judge it in general.
func TestCoverageIsTrue(t *testing.T) {
	all, err := Coverage()
	require.NoError(t, err)
	by := map[string]Rule{}
	for _, r := range fresh(t).rules {
		by[r.ID] = r
	}
	for _, p := range all {
		cited := false
		for _, id := range p.Rules {
			r, ok := by[id]
			assert.True(t, ok, "%s: there is no rule %s", p.ID, id)
			cited = cited || slices.ContainsFunc(r.Basis, func(b Basis) bool { return b.Document == p.Document })
		}
		if len(p.Rules) > 0 {
			assert.Equal(t, !p.General, cited, "%s: general says that no rule cites %s", p.ID, p.Document)
		}
	}
}

// TestEveryBasisIsInTheIndex: what a rule rests on is found by its paragraph.
func TestEveryBasisIsInTheIndex(t *testing.T) {
	s := fresh(t)
	law := s.Law()
	for _, r := range s.rules {
		for _, b := range r.Basis {
			i := slices.IndexFunc(law, func(c Citation) bool { return c.Basis == b })
			if b.Standing == "practice" {
				assert.Equal(t, -1, i, r.ID)
				continue
			}
			require.GreaterOrEqual(t, i, 0, "%s: %v", r.ID, b)
			assert.Contains(t, law[i].Rules, r.ID)
		}
	}
}

// TestNaturalOrder: title 46 part 38 is looked for before part 151.
func TestNaturalOrder(t *testing.T) {
	docs := []string{"46 CFR 151.04-5", "EN 12115", "46 CFR 38.15-5", "29 CFR 1910.111", "29 CFR 1910.12"}
	slices.SortFunc(docs, natural)
	assert.Equal(t, []string{"29 CFR 1910.12", "29 CFR 1910.111", "46 CFR 38.15-5", "46 CFR 151.04-5", "EN 12115"}, docs)
}

func TestCoverageIsFresh(t *testing.T) {
	all, err := Coverage()
	require.NoError(t, err)
	want := coveragePage(all, fresh(t).Law())
	if *update {
		require.NoError(t, os.WriteFile(coverageFile, []byte(want), 0o644))
	}
	got, err := os.ReadFile(coverageFile)
	require.NoError(t, err, "run go test ./rules -update")
	assert.Equal(t, want, string(got), "run go test ./rules -update")
}

// fresh is the set as the folder says, not as the index last said.
func fresh(t *testing.T) Set {
	t.Helper()
	modules, err := read(here)
	require.NoError(t, err)
	return Set{rules: described(modules).Rules}
}

func coveragePage(all []Paragraph, law []Citation) string {
	b := &strings.Builder{}
	count := map[string]int{}
	for _, p := range all {
		count[p.Judged()]++
	}
	fmt.Fprintf(b, "# What the rules cover\n\nOf %d paragraphs considered, rules judge %d in full and %d in part; %d are out of scope, each with the reason.\n",
		len(all), count["judged"], count["partly"], count["not"])
	b.WriteString("\nThe federal code was mostly read in its 2015 annual edition: check the current code before relying on a figure.\n" +
		"Recalled means that nobody has read the text for this program.\n")
	for _, l := range lists {
		fmt.Fprintf(b, "\n## %s\n\n| | paragraph | what it says | known as | rules | not judged |\n|---|---|---|---|---|---|\n", l.heading)
		for _, p := range all {
			if strings.TrimRight(p.ID, "0123456789") == l.letter {
				fmt.Fprintf(b, "| %s | %s %s | %s | %s | %s | %s |\n", p.ID, p.Document, p.Clause, p.Says, p.Standing, linked(p.Rules), p.OutOfScope)
			}
		}
	}
	b.WriteString("\n## Index by paragraph\n\n| document | edition | clause | known as | rules |\n|---|---|---|---|---|\n")
	for _, c := range law {
		fmt.Fprintf(b, "| %s | %s | %s | %s | %s |\n", c.Document, c.Edition, c.Clause, c.Standing, linked(c.Rules))
	}
	return b.String()
}

func linked(ids []string) string {
	var out []string
	for _, id := range ids {
		out = append(out, fmt.Sprintf("[%s](%s/README.md)", id, id))
	}
	return strings.Join(out, ", ")
}
