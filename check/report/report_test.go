package report

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestFormatsAreFoundByName(t *testing.T) {
	assert.Equal(t, []string{"text", "json", "markdown", "html", "sarif", "junit"}, Formats())
	for _, name := range Formats() {
		w, err := For(name)
		require.NoError(t, err)
		assert.NotNil(t, w)
	}
	for typed, hint := range map[string]string{"txt": "did you mean text?", "JSON": "did you mean json?", "markdwon": "did you mean markdown?", "htm": "did you mean html?", "Sarif": "did you mean sarif?"} {
		_, err := For(typed)
		assert.ErrorContains(t, err, hint)
	}
	for _, typed := range []string{"", "pdf", "x"} {
		_, err := For(typed)
		assert.ErrorContains(t, err, "use one of: text, json, markdown, html, sarif, junit")
		assert.NotContains(t, err.Error(), "mean", typed)
	}
}

func TestAVerdictThatDeniesItselfIsNotReported(t *testing.T) {
	cases := map[string]struct {
		spoil func(*Verdict)
		want  string
	}{
		"stop below fit":         {func(v *Verdict) { v.Findings = unfitLine().Findings[2:3] }, "findings that stop the line stand below it: 1"},
		"stop below conditional": {func(v *Verdict) { v.Word, v.Findings = Conditional, unfitLine().Findings }, "findings that stop the line stand below it: 6"},
		"stop below unproven":    {func(v *Verdict) { v.Word, v.Findings = Unproven, unfitLine().Findings }, "findings that stop the line stand below it: 6"},
		"condition below fit":    {func(v *Verdict) { v.Findings = conditionalLine().Findings }, "conditions stand below it: 1"},
		"missing below fit":      {func(v *Verdict) { v.Unjudged = unprovenLine().Unjudged }, "could not be judged: 4"},
		"to confirm below fit":   {func(v *Verdict) { v.Confirm = conditionalLine().Confirm }, "still to be confirmed: 2"},
		"fit of nothing":         {func(v *Verdict) { v.Judged = nil }, "no rule judged anything"},
		"no word":                {func(v *Verdict) { v.Word = "" }, `"" is no verdict word; the words are unfit, unproven, conditional, fit`},
		"another word":           {func(v *Verdict) { v.Word = "pass" }, `"pass" is no verdict word`},
		"another document":       {func(v *Verdict) { v.Schema = "lineworthy/verdict/2" }, `"lineworthy/verdict/2"`},
		"a severity of its own":  {func(v *Verdict) { v.Findings = []Finding{{Rule: "a/b", Severity: "warning"}} }, `finding 1 (a/b) has the severity "warning"; known are stop, condition, note`},
	}
	for name, c := range cases {
		v := fitLine()
		require.NoError(t, sound(v))
		c.spoil(v)
		for _, format := range Formats() {
			w, _ := For(format)
			var b bytes.Buffer
			assert.ErrorContains(t, w(&b, v, Options{}), c.want, name)
			assert.Empty(t, b.String(), name)
		}
	}
	for _, format := range Formats() {
		w, _ := For(format)
		assert.ErrorContains(t, w(&bytes.Buffer{}, nil, Options{}), "no verdict")
	}
}

func TestANoteLeavesALineFit(t *testing.T) {
	v := fitLine()
	v.Findings = []Finding{noted()}
	assert.Contains(t, written(t, Text, v, Options{}), "NOTE: 1 finding.")
	assert.NotContains(t, written(t, Text, v, Options{}), "STOP")
}

func TestAllFaultsAreToldAtOnce(t *testing.T) {
	v := fitLine()
	v.Schema, v.Judged, v.Confirm = "x", nil, conditionalLine().Confirm
	err := sound(v)
	assert.ErrorContains(t, err, `"x"`)
	assert.ErrorContains(t, err, "confirmed: 2")
	assert.ErrorContains(t, err, "no rule judged anything")
}

func TestEmptyPartsAreSaidToBeEmpty(t *testing.T) {
	v := &Verdict{Schema: Schema, Word: Unproven, Line: "KD-1", Reason: "Nothing is known."}
	text := written(t, Text, v, Options{})
	for _, want := range []string{"Least to spare: not known for this line.", "FINDINGS: none.", "TO CONFIRM: nothing.",
		"COULD NOT BE JUDGED: nothing was left open.", "WHAT WAS JUDGED: nothing.", "PRESSURE CASES: none was worked out."} {
		assert.Contains(t, text, want)
	}
	md := written(t, Markdown, v, Options{})
	for _, want := range []string{"not known for this line", "## Findings\n\nNone.", "## To confirm\n\nNothing.", "Nothing was left open.", "None was worked out."} {
		assert.Contains(t, md, want)
	}
}
