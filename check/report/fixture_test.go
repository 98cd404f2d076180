package report

import (
	"crypto/sha256"
	"encoding/hex"
)

// The lines below are invented. They exercise the layout; what they say of hoses and chemicals is no data.

func digest(of string) string {
	sum := sha256.Sum256([]byte(of))
	return hex.EncodeToString(sum[:])
}

func base(line, title string) *Verdict {
	return &Verdict{
		Schema: Schema, Tool: Tool{Name: "lineworthy", Version: "0.0.0-test", Engine: "rules engine 1.0"},
		Line: line, Title: title, Sheet: "lines/" + line + ".yaml", AsOf: "2026-11-25",
		Regimes:  []string{"29 CFR 1910.106"},
		Runs:     runsOf(),
		Units:    Units{Pressure: "bar(g)", Temperature: "°C", Length: "mm"},
		Cautions: append([]string{"Butanone burns, and its vapour can light far from the spill."}, StandingCautions()...),
		Digests: Digests{Sheet: digest(line), Facts: digest(line + " facts"), Rules: digest("rules"),
			Catalog: map[string]string{"fluid/butanone": digest("butanone"), "hose/chemical-hose": digest("hose"), "material/ptfe": digest("ptfe")}},
	}
}

func runsOf() []Run {
	return []Run{
		{Name: "pad", From: "cylinder, 200 bar(g)", To: "returnable", Carries: []string{"Nitrogen"}, Parts: []Part{
			{ID: "PR1", Kind: "regulator"}, {ID: "RV1", Kind: "relief", Name: "behind the regulator", Branch: true}}},
		{Name: "liquid", From: "returnable", To: "day-tank", Carries: []string{"Butanone", "Ethanol"}, Parts: []Part{
			{ID: "V1", Kind: "valve"}, {ID: "H1", Kind: "hose"}, {ID: "H2", Kind: "hose"}, {ID: "V12", Kind: "valve"}}},
	}
}

func judged() []Judged {
	return []Judged{
		{Rule: "pressure/demand_over_capacity", Title: "A part can see more than it holds", Severity: "stop", Judged: []string{"H1", "V1"}},
		{Rule: "inspection/hose_test_overdue", Title: "The yearly test of a hose is overdue", Severity: "condition", Judged: []string{"H1"}},
		{Rule: "service/chlorine_wet", Title: "Chlorine meets water", Severity: "stop", NotApplicable: []string{"product"}},
	}
}

func cases() []Case {
	return []Case{
		{Run: "pad", From: "PR1", Case: "lock-up", Pressure: "3.6 bar(g)", KPa: 360, Temperature: "45 °C", Cause: "PR1 with the flow stopped, 20 % over set"},
		{Run: "liquid", From: "returnable", Case: "duty", Pressure: "3.7 bar(g)", KPa: 370, Temperature: "45 °C", Cause: "lock-up of PR1 with 0.5 m of liquid above"},
	}
}

func fitLine() *Verdict {
	v := base("KD-101", "Butanone to the day tank")
	v.Word, v.Reason = Fit, "Every part holds what can reach it."
	v.Governing = &Governing{Part: "H1", What: "working pressure of the hose", Case: "lock-up", HaveKPa: 1000, NeedKPa: 360, Have: "10 bar(g)", Need: "3.6 bar(g)", Margin: "+6.4 bar"}
	v.Judged, v.Cases = judged(), cases()
	return v
}

func conditionalLine() *Verdict {
	v := base("KD-102", "Butanone to the day tank, flushed with ethanol")
	v.Word, v.Reason = Conditional, "Two values rest on memory and one hose is due for its test."
	v.Governing = fitLine().Governing
	v.Findings = []Finding{{
		Rule: "inspection/hose_test_due_soon", Severity: "condition", Title: "The test of a hose runs out within a month", Subject: "H1", Part: "H1",
		Message: "H1 was last tested on 2025-12-10", Have: "350 days", Need: "at most 365 days", Margin: "+15 days",
		Action:   "Book the test now. Do not use the hose after 2026-12-10.",
		Basis:    []Basis{{Document: "49 CFR 180.416", Edition: "CFR 2015 annual edition", Clause: "(e)", Standing: "published"}},
		Position: &Position{Line: 31, Col: 9},
	}}
	v.Confirm = []Confirm{
		{What: "ptfe in butanone up to 45 °C: resistant", Standing: "recalled", Source: "resistance list of the hose maker", UsedBy: []string{"H1 liner", "seal of J2"}},
		{What: "chemical hose, class B, DN 25: 10 bar(g)", Standing: "restated", Source: "EN 12115", Clause: "table 2", UsedBy: []string{"H1"}},
	}
	v.Judged, v.Cases = judged(), cases()
	return v
}

func unprovenLine() *Verdict {
	v := base("KD-104", "Butanone from a returnable vessel")
	v.Word, v.Reason = Unproven, "Three things are not known, among them the rating of the hose H2."
	why, ask := "the sheet does not say when it was last tested", "runs.liquid.parts: tested, from the tag or the certificate"
	v.Unjudged = []Unjudged{
		{Subject: "H1", Fact: "hoses.tested_day", Why: why, Ask: ask, Rules: []string{"inspection/hose_test_overdue", "inspection/hose_test_due_soon"}},
		{Subject: "H2", Fact: "hoses.tested_day", Why: why, Ask: ask, Rules: []string{"inspection/hose_test_overdue"}},
		{Subject: "H2", Fact: "capacities.rated_kpa", Why: "its rating at 45 °C is not known", Ask: "the maker's certificate: write it to rated, with the paper under evidence", Rules: []string{"pressure/demand_over_capacity"}},
		{Subject: "product", Fact: "fluids.accumulator", Ask: "the conductivity of the liquid, from its safety data sheet", Rules: []string{"static/no_bonding"}},
	}
	v.Judged = append(judged(), Judged{Rule: "static/no_bonding", Title: "A part is not bonded", Severity: "stop", CouldNot: []string{"H1", "H2"}})
	return v
}
