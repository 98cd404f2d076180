package report

import "fmt"

// unfitLine has findings of every severity, given in the wrong order, and several of one rule.
func unfitLine() *Verdict {
	v := base("KD-103", "Butanone from a returnable vessel, regulator without a relief device behind it")
	v.Word, v.Reason = Unfit, "With PR1 stuck open 4 parts can see more than they hold."
	v.Governing = &Governing{Part: "H1", What: "working pressure of the hose", Case: "regulator-failed-open", HaveKPa: 800, NeedKPa: 2400, Have: "8 bar(g)", Need: "24 bar(g)", Margin: "-16 bar"}
	v.Findings = append(v.Findings, noted(), conditioned())
	for i, part := range []string{"H1", "H2", "V1", "V12"} {
		v.Findings = append(v.Findings, overloaded(part, i))
	}
	for i, part := range []string{"H1", "H2"} {
		f := overloaded(part, i+8)
		f.Rule, f.Title, f.Subject = "material/reinforcement_unsuited", "The layer behind the liner does not stand the fluid", part+" reinforcement polyester in product"
		f.Message, f.Case, f.Have, f.Need, f.Margin = "Vapour that passes the liner attacks the layer that carries the pressure", "", "", "", ""
		f.Action, f.Basis = "Take a hose whose reinforcement stands butanone.", []Basis{{Document: "common practice", Standing: "practice"}}
		v.Findings = append(v.Findings, f)
	}
	v.Confirm = conditionalLine().Confirm[:1]
	v.Judged, v.Cases = judged(), cases()
	v.Judged[0].Found = 4
	v.Digests.Site = digest("site")
	return v
}

func overloaded(part string, i int) Finding {
	return Finding{
		Rule: "pressure/demand_over_capacity", Severity: "stop", Title: "A part can see more than it holds", Subject: part, Part: part, Case: "regulator-failed-open",
		Message: fmt.Sprintf("%s holds %d bar(g) and can see 24 bar(g)", part, 8+i),
		Have:    fmt.Sprintf("%d bar(g)", 8+i), Need: "24 bar(g)", Margin: fmt.Sprintf("-%d bar", 16-i),
		Action: "Fit a relief device behind the regulator that passes its full flow, or parts that hold the cylinder pressure. Have the change reviewed before the line is used again.",
		Basis: []Basis{
			{Document: "29 CFR 1910.111", Edition: "CFR 2015 annual edition", Clause: "(b)(8)(ii)", Standing: "published"},
			{Document: "EN 12115", Edition: "2021", Clause: "table 2", Standing: "recalled"},
		},
		Position: &Position{Line: 28 + 3*i, Col: 9},
		Numbers:  map[string]int64{"have_kpa": int64(800 + 100*i), "need_kpa": 2400},
		Words:    map[string]string{"part": part},
	}
}

func conditioned() Finding {
	return Finding{
		Rule: "service/nobody_attends", Severity: "condition", Title: "Nobody stays with the transfer", Subject: "KD-103",
		Message: "Nobody stays with the transfer while the line is under pressure",
		Action:  "Name a trained person who stays for the whole transfer.",
		Basis:   []Basis{{Document: "49 CFR 177.834", Edition: "CFR 2015 annual edition", Clause: "(i)", Standing: "published"}},
	}
}

func noted() Finding {
	return Finding{
		Rule: "marking/colour_differs", Severity: "note", Title: "The colour band differs from the usual one", Subject: "H1", Part: "H1",
		Message: "H1 has a green band", Action: "Tell the crew that the band of H1 has no meaning here.",
		Basis: []Basis{{Document: "common practice", Standing: "practice"}},
	}
}

// samples are the verdicts of the golden files, by file name.
func samples() map[string]*Verdict {
	return map[string]*Verdict{"fit": fitLine(), "conditional": conditionalLine(), "unproven": unprovenLine(), "unfit": unfitLine()}
}
