package oracle

import (
	"slices"
	"strings"
)

func hoseEditionNotStated(l *line) {
	for _, h := range l.Hoses {
		if h.EditionMatters && !h.EditionStated {
			l.findPart(h.ID)
		}
	}
}

func inKindHoseWithoutIdentity(l *line) {
	for _, h := range l.Hoses {
		if l.Line.Changed && !h.AssignedStated && l.knows(lineSubject, has("line.change_in_kind", l.Line.ChangeInKind)) &&
			yes(l.Line.ChangeInKind) {
			l.findPart(h.ID)
		}
	}
}

// meetsOxygen says whether any part carries oxygen, which a gas with oil in it must not reach.
func (l *line) meetsOxygen() bool {
	return slices.ContainsFunc(l.Parts, func(p *Part) bool { return p.Oxygen })
}

// helperGas is a compressed gas that is not the product.
func helperGas(f *Fluid) bool {
	return f.Form == "compressed-gas" && (f.Role == "flush" || f.Role == "pad" || f.Role == "test")
}

func oilInGasOnOxygenNotStated(l *line) {
	for _, f := range l.Fluids {
		if helperGas(f) && f.OilFree == nil && l.meetsOxygen() {
			l.find(f.ID, word("name", f.Name))
		}
	}
}

func regimeWithoutRules(l *line) {
	for _, r := range l.Line.Unruled {
		l.find(lineSubject, word("regime", r))
	}
}

// testPressureNotRecorded is about tests that have been made.
func testPressureNotRecorded(l *line) {
	if !l.under("29 CFR 1910.119", "33 CFR 156.170", "40 CFR 68.73", "46 CFR 151.04-5") {
		return
	}
	for _, h := range l.Hoses {
		if above(h.TestedDays, -1) && h.TestedAtKPa == nil {
			l.findPart(h.ID)
		}
	}
}

// valueNotConfirmed says where to look: in the document remembered, the maker's papers, or on the thing itself.
func valueNotConfirmed(l *line) {
	for _, v := range l.Values {
		var how, where string
		switch v.Standing {
		case "recalled":
			how, where = "memory", strings.TrimSpace(v.Source+" "+v.Clause)
		case "practice":
			how, where = "common practice", "the maker's papers"
		case "stated":
			how, where = "the sheet", "a plate, certificate or maker's paper, and name it under evidence"
		default:
			continue
		}
		l.find(v.ID, word("how", how), word("used_by", strings.Join(v.Used, ", ")), word("what", v.What), word("where", where))
	}
}
