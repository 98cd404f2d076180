package report

import (
	"bytes"
	"encoding/json"
	"os"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// sarifValidator is the public schema of SARIF 2.1.0, read by an independent implementation of JSON Schema.
func sarifValidator(t *testing.T) *jsonschema.Schema {
	t.Helper()
	data, err := os.ReadFile("../../testdata/published/sarif/sarif-2.1.0-rtm.5.json")
	require.NoError(t, err)
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	require.NoError(t, c.AddResource("sarif.json", doc))
	s, err := c.Compile("sarif.json")
	require.NoError(t, err)
	return s
}

func sarifOf(t *testing.T, vs ...*Verdict) (sarifLog, []byte) {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, sarif(&b, vs...))
	var log sarifLog
	require.NoError(t, json.Unmarshal(b.Bytes(), &log))
	return log, b.Bytes()
}

func TestResultsKeepToThePublicSchema(t *testing.T) {
	s := sarifValidator(t)
	absolute := conditionalLine()
	absolute.Sheet = "/site/lines/KD 102 %.yaml"
	bare := &Verdict{Schema: Schema, Word: Unproven, Unjudged: []Unjudged{{}}, Confirm: []Confirm{{}}}
	all := []*Verdict{absolute, bare}
	for _, v := range samples() {
		all = append(all, v)
	}
	for _, v := range append(all, nil) {
		vs := []*Verdict{v}
		if v == nil {
			vs = all // and all of them in one document
		}
		_, text := sarifOf(t, vs...)
		doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
		require.NoError(t, err)
		assert.NoError(t, s.Validate(doc))
	}
	_, text := sarifOf(t, unfitLine())
	bad, err := jsonschema.UnmarshalJSON(bytes.NewReader(bytes.Replace(text, []byte(`"level": "error"`), []byte(`"level": "stop"`), 1)))
	require.NoError(t, err)
	assert.Error(t, s.Validate(bad), "the schema is not asleep")
}

func TestResultsHaveLevelPlaceAndFingerprint(t *testing.T) {
	log, _ := sarifOf(t, unfitLine())
	run := log.Runs[0]
	levels, prints := map[string]int{}, map[string]bool{}
	for _, r := range run.Results {
		levels[r.Level]++
		prints[r.PartialFingerprints["subject/v1"]] = true
		assert.Equal(t, r.RuleID, run.Tool.Driver.Rules[r.RuleIndex].ID)
	}
	assert.Equal(t, map[string]int{"error": 6, "warning": 1, "note": 2}, levels, "a value to confirm is a note")
	assert.Len(t, prints, len(run.Results), "each its own")
	first := run.Results[2]
	assert.Equal(t, &sarifRegion{28, 9}, first.Locations[0].Physical.Region)
	assert.Equal(t, "lines/KD-103.yaml", first.Locations[0].Physical.Artifact.URI)
	assert.Contains(t, run.Tool.Driver.Rules[first.RuleIndex].Help.Text, "Basis: 29 CFR 1910.111")
	edited := unfitLine()
	edited.Findings[2].Position, edited.Findings[2].Message = &Position{90, 1}, "H1 holds 7 bar(g)"
	again, _ := sarifOf(t, edited)
	assert.Equal(t, first.PartialFingerprints, again.Runs[0].Results[2].PartialFingerprints, "an edit elsewhere leaves it the same finding")
}

func TestWhatIsNotKnownIsAWarning(t *testing.T) {
	log, _ := sarifOf(t, unprovenLine())
	require.Len(t, log.Runs[0].Results, 4)
	for _, r := range log.Runs[0].Results {
		assert.Equal(t, unknownRule, r.RuleID)
		assert.Equal(t, "warning", r.Level)
		assert.Contains(t, r.Message.Text, "Find out: ")
	}
}

func TestPathsBecomeURIs(t *testing.T) {
	for path, want := range map[string]string{"a b/c#d.yaml": "a%20b/c%23d.yaml", "/x/y.yaml": "file:///x/y.yaml", "50 %.yaml": "50%20%25.yaml"} {
		assert.Equal(t, want, sarifPlace(path).URI)
	}
}
