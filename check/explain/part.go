package explain

import (
	"slices"

	"lineworthy/check"
)

// Held is what one thing holds and what it must hold. What is not known is empty.
type Held struct {
	What   string `json:"what"`
	Case   string `json:"case"`
	Have   string `json:"have"`
	Need   string `json:"need"`
	Margin string `json:"margin"`
}

// Range is what temperatures are permitted and what the thing sees.
type Range struct {
	What   string `json:"what"`
	From   string `json:"from"`
	To     string `json:"to"`
	Sees   string `json:"sees"`
	Margin string `json:"margin"` // on the nearer side
}

// Pair is one material of the part in one fluid.
type Pair struct {
	Layer    string `json:"layer"`
	Material string `json:"material"`
	Fluid    string `json:"fluid"`
	Rating   string `json:"rating"` // empty when nothing is known
	To       string `json:"to"`
	Sees     string `json:"sees"`
	Known    string `json:"known"` // document and standing
}

// JudgedBy is one rule that judged the thing.
type JudgedBy struct {
	Rule  string `json:"rule"`
	Title string `json:"title"`
	Found bool   `json:"found"`
}

func (in Input) thing(a *Answer, t thing) {
	s := check.ShownAs(in.Sheet)
	a.Name, a.Kind, a.Says, a.Position = t.name, t.kind, in.standing(t), in.at(t.pos.Line)
	for _, f := range in.against(t) {
		a.Beside = append(a.Beside, f.Severity+", "+f.Rule+": "+f.Message)
	}
	for _, c := range in.Facts.Capacities {
		if names(c.ID, t.name) || names(c.Part, t.name) {
			a.Holds = append(a.Holds, heldOf(c, s))
		}
	}
	for _, l := range in.Facts.Limits {
		if names(l.ID, t.name) {
			a.Ranges = append(a.Ranges, rangeOf(l, s))
		}
	}
	a.Pairs = append(a.Pairs, in.pairs(t, s)...)
	a.Judged = append(a.Judged, in.judged(t)...)
	a.Missing = in.gapsOf(t)
	a.Sheet = in.writtenBelow(t)
	for _, v := range in.Facts.Values {
		if slices.ContainsFunc(v.Used, func(u string) bool { return names(u, t.name) }) {
			a.Rests = append(a.Rests, valueOf(v))
		}
	}
}
