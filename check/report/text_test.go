package report

import (
	"errors"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestFindingsComeWorstFirst(t *testing.T) {
	for _, w := range []Writer{Text, Markdown} {
		text := written(t, w, unfitLine(), Options{})
		at := -1
		for _, title := range []string{"A part can see more", "The layer behind", "Nobody stays", "The colour band"} {
			next := strings.Index(text, title)
			assert.Greater(t, next, at, title)
			at = next
		}
	}
}

func TestAdviceOfARuleIsGivenOnce(t *testing.T) {
	v := unfitLine()
	for _, w := range []Writer{Text, Markdown} {
		text := written(t, w, v, Options{Width: 300})
		assert.Equal(t, 1, strings.Count(text, "Fit a relief device behind the regulator"))
		for _, part := range []string{"H1 holds 8 bar", "H2 holds 9 bar", "V1 holds 10 bar", "V12 holds 11 bar"} {
			assert.Equal(t, 1, strings.Count(text, part), part)
		}
	}
	assert.Equal(t, 1, strings.Count(written(t, Text, v, Options{}), "Vapour that passes the liner"), "the same words for two hoses")
	v.Findings[2].Action = "Something else."
	assert.Len(t, groups(v, stop), 3, "another advice is another entry")
}

func TestMissingFactsOfOneKindAreAskedOnce(t *testing.T) {
	text := written(t, Text, unprovenLine(), Options{})
	assert.Contains(t, text, "  - H1, H2: the sheet does not say when it was last tested\n")
	assert.Contains(t, text, "COULD NOT BE JUDGED: 3 things to find out.")
	assert.Contains(t, text, "Waiting:  2 checks\n", "a check that waits twice counts once")
	assert.NotContains(t, text, "inspection/hose_test_overdue")
	full := written(t, Text, unprovenLine(), Options{Full: true})
	assert.Contains(t, full, "2 checks (inspection/hose_test_overdue, inspection/hose_test_due_soon)")
	assert.Contains(t, full, digest("rules"))
	v := unprovenLine()
	v.Unjudged = []Unjudged{{Ask: "the supplier"}}
	assert.Contains(t, written(t, Text, v, Options{Full: true}), "  - not stated\n    Find out: the supplier\n    Waiting:  0 checks\n")
}

func TestWhatWasJudgedIsCounted(t *testing.T) {
	v := unprovenLine()
	assert.Equal(t, "2 rules of 4 judged 3 things. 1 rule did not apply to this line. 1 rule could not judge 2 things.", judgedLine(v))
	v.Judged = nil
	assert.Equal(t, "nothing. No rule was applied.", judgedLine(v))
}

func TestReportsSpeakPlainly(t *testing.T) {
	jargon := regexp.MustCompile(`(?i)\b(rego|facts?|null|nil|undefined|boolean|schema)\b`)
	for name, v := range samples() {
		for _, w := range []Writer{Text, Markdown} {
			assert.Empty(t, jargon.FindString(written(t, w, v, Options{})), name)
		}
	}
}

func TestStandingCautionsAreNeverLeftOff(t *testing.T) {
	v := fitLine()
	v.Cautions = []string{StandingCautions()[0]}
	for _, w := range []Writer{Text, Markdown} {
		text := written(t, w, v, Options{Width: 400})
		for _, start := range []string{"This is a screening aid.", "United States federal law"} {
			assert.Equal(t, 1, strings.Count(text, start), start)
		}
	}
}

// A sheet is written by anybody: its words must not repaint the terminal, nor turn the text around (Unicode
// Standard Annex 9, 2.1 to 2.4 list the direction marks; recalled), nor open a Markdown structure.
func TestWordsOfTheSheetStayWords(t *testing.T) {
	v := unfitLine()
	v.Title = "x\x1b[2J\x1b[32mFIT\u202e\nFIT  KD-1 \x00\x9b"
	text := written(t, Text, v, Options{})
	assert.NotRegexp(t, "[\x1b\u202e\x00\u009b]", text)
	assert.NotContains(t, text, "\nFIT")
	v.Title = "a | b\n# FIT <!-- **x** [y](z) `c`"
	md := written(t, Markdown, v, Options{})
	assert.True(t, strings.HasPrefix(md, `# UNFIT: KD-103 a \| b \# FIT \<\!-- \*\*x\*\* \[y\](z) \`+"`c\\`\n"), md)
	v.Findings[0].Message = "cell | cell"
	for _, block := range regexp.MustCompile(`(?m)(^\|.*\n)+`).FindAllString(written(t, Markdown, v, Options{Full: true}), -1) {
		rows := strings.Split(strings.TrimSpace(block), "\n")
		bars := func(s string) int { return strings.Count(s, "|") - strings.Count(s, `\|`) }
		for _, row := range rows {
			assert.Equal(t, bars(rows[0]), bars(row), row)
		}
	}
}

func TestAPlaceInTheMessageIsNotRepeated(t *testing.T) {
	for name, want := range map[string]bool{"H1": true, "H": false, "V1": false, "V12": true, "V12-b": false, "band of H1": true, "H1 x": false, "": true} {
		assert.Equal(t, want, mentions("V12 and the band of H1", name), name)
	}
	v := unfitLine()
	assert.NotContains(t, written(t, Text, v, Options{}), "      H1\n")
	v.Findings[0].Message = "The hose has a green band"
	assert.Contains(t, written(t, Text, v, Options{}), "      H1\n")
}

func TestOnlyTheStandingsInUseAreExplained(t *testing.T) {
	v := conditionalLine()
	assert.Equal(t, "(restated = read in somebody's summary of the document; recalled = from memory of the document)", legend(v))
	v.Confirm[0].Standing, v.Confirm[1].Standing = "heard", "heard"
	assert.Empty(t, legend(v))
}

func TestDocumentsAreCitedWithHowTheyAreKnown(t *testing.T) {
	for want, b := range map[string]Basis{
		"29 CFR 1910.111 (2015 annual edition), (b)(8)(ii), published; check the current code": {"29 CFR 1910.111", "CFR 2015 annual edition", "(b)(8)(ii)", "published"},
		"33 CFR 154.500, recalled: from memory, read the document; check the current code":     {"33 CFR 154.500", "", "", "recalled"},
		"EN 12115 (2021), table 2, restated: from a summary, read the document":                {"EN 12115", "2021", "table 2", "restated"},
		"common practice, no document":            {"common practice", "", "", "practice"},
		"certificate 12 of the hose, site":        {"certificate 12 of the hose", "", "", "site"},
		"ABC CFR 12 (January 2018), published":    {"ABC CFR 12", "January 2018", "", "published"},
		"the handbook of somebody (2), published": {"the handbook of somebody", "2", "", "published"},
	} {
		assert.Equal(t, want, cite(b))
	}
}

func TestPlaceNamesPartThingAndCaseOnce(t *testing.T) {
	for want, f := range map[string]Finding{
		"H1":                     {Subject: "H1", Part: "H1"},
		"H1 liner ptfe in water": {Subject: "H1 liner ptfe in water", Part: "H1"},
		"J2, seal of the tank":   {Subject: "seal of the tank", Part: "J2"},
		"H1, lock-up":            {Subject: "H1", Case: "lock-up"},
		"liquid/lock-up/PR1":     {Subject: "liquid/lock-up/PR1", Part: "PR1", Case: "lock-up"},
		"H1, duty":               {Part: "H1", Case: "duty"},
		"":                       {},
	} {
		assert.Equal(t, want, place(f))
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestAWriteFaultIsReported(t *testing.T) {
	for _, name := range Formats() {
		w, _ := For(name)
		assert.ErrorContains(t, w(broken{}, fitLine(), Options{}), "disk full", name)
	}
	assert.ErrorContains(t, Summary(broken{}, nil, Options{}), "disk full")
}
