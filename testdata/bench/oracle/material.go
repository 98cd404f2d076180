package oracle

import (
	"slices"
	"strings"
)

var material = []rule{
	{"material/ammonia_iron_kind_not_shown", condition, ammoniaIronKindNotShown},
	{"material/barred_by_another_law", note, barredByAnotherLaw},
	{"material/barred_by_law", stop, barredByLaw},
	{"material/limited_use", condition, limitedUse},
	{"material/lpg_aluminium_tube_above_law", stop, lpgAluminiumTubeAboveLaw},
	{"material/reinforcement_attacked_through_liner", stop, reinforcementAttackedThroughLiner},
	{"material/test_liquid_left_in_dry_line", condition, testLiquidLeftInDryLine},
	{"material/unsuitable_for_fluid", stop, unsuitableForFluid},
}

// usable are the groups of pairs that no rule has thrown out yet.
func (p *Pairs) usable() [3][]*Pair { return [...][]*Pair{p.Limited, p.Suitable, p.Unlisted} }

// all are the pairs in the order of the facts.
func (p *Pairs) all() [4][]*Pair {
	return [...][]*Pair{p.Unsuitable, p.Limited, p.Suitable, p.Unlisted}
}

// ammoniaIronKindNotShown: ductile iron may or may not be of the kind that the law takes.
func ammoniaIronKindNotShown(l *line) {
	if !l.under("29 CFR 1910.111") {
		return
	}
	for _, group := range l.Pairs.usable() {
		for _, p := range group {
			if p.Material == "DI" && strings.HasPrefix(p.Fluid, "Ammonia") {
				l.findAt(p.ID, p.Part, "", word("layer", p.Layer))
			}
		}
	}
}

func (l *line) bars(applies bool) {
	for _, b := range l.Bars {
		if b.Barred && b.Applies == applies {
			l.findAt(b.ID, b.Part, "", word("fluid", b.Fluid), word("material", b.Material), word("regime", b.Regime), word("why", b.Why))
		}
	}
}

func barredByLaw(l *line)        { l.bars(true) }
func barredByAnotherLaw(l *line) { l.bars(false) }

// rated notes every pair in one kind of contact, or in any, that nobody has rated.
func (l *line) rated(contact string) {
	for _, group := range l.Pairs.all() {
		for _, p := range group {
			if contact == "" || p.Contact == contact {
				l.knows(p.ID, said("pairs.rating", p.Rating))
			}
		}
	}
}

func (l *line) findPair(p *Pair) {
	l.findAt(p.ID, p.Part, "", word("effect", p.Effect), word("fluid", p.Fluid), word("layer", p.Layer), word("material", p.Material))
}

func limitedUse(l *line) {
	l.rated("")
	for _, p := range l.Pairs.Limited {
		l.findPair(p)
	}
}

func (l *line) unsuitable(contact string) {
	l.rated(contact)
	for _, p := range l.Pairs.Unsuitable {
		if p.Contact == contact {
			l.findPair(p)
		}
	}
}

func reinforcementAttackedThroughLiner(l *line) { l.unsuitable("permeated") }
func unsuitableForFluid(l *line)                { l.unsuitable("wetted") }

// lpgAluminiumTubeAboveLaw: pipe of one of two aluminium alloys, above 20 psig.
func lpgAluminiumTubeAboveLaw(l *line) {
	if !l.under("29 CFR 1910.110") {
		return
	}
	for _, c := range l.Capacities {
		if c.What == "body" && l.knows(c.ID, has("capacities.demand_kpa", c.DemandKPa)) && *c.DemandKPa > 138 &&
			l.isKind(c.Part, "pipe") && l.aluminium(c.Part) {
			l.findAt(c.ID, c.Part, "", num("demand_kpa", *c.DemandKPa), num("most_kpa", 138))
		}
	}
}

func (l *line) isKind(part, kind string) bool {
	at := l.place(part)
	return at >= 0 && l.Parts[at].Kind == kind
}

func (l *line) aluminium(part string) bool {
	for _, group := range l.Pairs.usable() {
		if slices.ContainsFunc(group, func(p *Pair) bool {
			return p.Part == part && (p.Material == "A03560" || p.Material == "A96061")
		}) {
			return true
		}
	}
	return false
}

// testLiquidLeftInDryLine takes any liquid for a wet one.
func testLiquidLeftInDryLine(l *line) {
	for _, t := range l.Tests {
		if t.DryService && wetAfter(t) {
			l.find(t.ID, word("dry", t.DryBecause), word("fluid", t.Fluid))
		}
	}
}
