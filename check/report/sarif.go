package report

import (
	"crypto/sha256"
	"encoding/hex"
	"io"
	"net/url"
	"path/filepath"
	"strconv"
	"strings"
)

// Rules of the report itself: what is no finding of a rule must still be seen by whoever looks at results alone.
const (
	unknownRule = "verdict/not_known"
	confirmRule = "verdict/to_confirm"
)

// levels are the severities in the words of SARIF 2.1.0, 3.27.10.
var levels = map[string]string{stop: "error", condition: "warning", note: "note"}

// SARIF writes the findings for tools that show them beside the sheet: OASIS Static Analysis Results Interchange Format
// 2.1.0. What could not be judged is a warning too, since many readers hide the quieter kinds; options do not change it.
func SARIF(w io.Writer, v *Verdict, _ Options) error { return sarif(w, v) }

// sarif writes one run for each line.
func sarif(w io.Writer, vs ...*Verdict) error {
	log := sarifLog{Schema: sarifSchema, Version: "2.1.0", Runs: []sarifRun{}}
	for _, v := range vs {
		v, err := ready(v)
		if err != nil {
			return err
		}
		log.Runs = append(log.Runs, newSarifRun(v))
	}
	return encode(w, log)
}

func newSarifRun(v *Verdict) sarifRun {
	rules, at := sarifRules(v)
	r := sarifRun{
		Tool:              sarifTool{sarifDriver{Name: v.Tool.Name, Version: v.Tool.Version, Rules: rules}},
		AutomationDetails: sarifID{v.Tool.Name + "/" + v.Line + "/" + v.AsOf},
		ColumnKind:        "unicodeCodePoints",
		Results:           []sarifResult{},
		Properties: map[string]any{"verdict": v.Word, "reason": v.Reason, "asOf": v.AsOf, "engine": v.Tool.Engine,
			"cautions": cautions(v), "digests": v.Digests},
	}
	if v.Sheet != "" {
		r.Artifacts = []sarifArtifact{{sarifPlace(v.Sheet), map[string]string{"sha-256": v.Digests.Sheet}}}
	}
	seen := map[string]int{}
	add := func(rule, level, subject, text string, at *Position, more map[string]any) {
		key := strings.Join([]string{v.Line, rule, subject}, "\n")
		seen[key]++
		r.Results = append(r.Results, sarifResult{RuleID: rule, Level: level, Message: sarifText{text},
			Locations: sarifLocations(v.Sheet, subject, at), Properties: more,
			PartialFingerprints: map[string]string{"subject/v1": fingerprint(key, seen[key])}})
	}
	for _, f := range v.Findings {
		add(f.Rule, levels[f.Severity], place(f), findingText(f), f.Position, findingMore(f))
	}
	for _, u := range v.Unjudged {
		add(unknownRule, "warning", u.Subject, unknownText(u), nil, map[string]any{"waiting": u.Rules})
	}
	for _, c := range v.Confirm {
		add(confirmRule, "note", list(c.UsedBy), "To confirm: "+c.What+". Look in: "+where(c)+" ("+c.Standing+").", nil, nil)
	}
	for i := range r.Results {
		r.Results[i].RuleIndex = at[r.Results[i].RuleID]
	}
	return r
}

// fingerprint stays the same when the sheet is edited elsewhere or a number changes.
func fingerprint(key string, nth int) string {
	sum := sha256.Sum256([]byte(key + "\n" + strconv.Itoa(nth)))
	return hex.EncodeToString(sum[:])
}

func sarifLocations(sheet, subject string, at *Position) []sarifLocation {
	var l sarifLocation
	if sheet != "" {
		l.Physical = &sarifPhysical{Artifact: sarifPlace(sheet)}
		if at != nil && at.Line > 0 {
			l.Physical.Region = &sarifRegion{at.Line, max(at.Col, 1)}
		}
	}
	if subject != "" {
		l.Logical = []sarifLogical{{subject}}
	}
	if l.Physical == nil && l.Logical == nil {
		return nil
	}
	return []sarifLocation{l}
}

// sarifPlace is a path as a URI, relative to where the sheet was judged.
func sarifPlace(path string) sarifURI {
	u := url.URL{Path: filepath.ToSlash(path)}
	if strings.HasPrefix(u.Path, "/") {
		u.Scheme = "file"
	}
	return sarifURI{u.String()}
}
