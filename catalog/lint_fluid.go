package catalog

import "fmt"

// moistGas forbids any pad gas that is not known to be dry and free of oil.
const moistGas = "moist-gas"

func (l *linter) fluid(s spot, f fluidFile) {
	if f.PropertiesOf != "" {
		l.refer(s, Fluids, f.PropertiesOf)
	}
	for _, r := range append(f.ForbidPads, f.Derived...) {
		if r.ID != moistGas {
			l.refer(s, Fluids, r.ID)
		}
	}
}

// row checks one compatibility row. A row without its temperature would speak for 0 °C only.
func (l *linter) row(s spot, r Row) {
	l.refer(s, Materials, r.Material)
	if _, written := find(s, "to_c"); !written {
		l.fault(s, "no to_c: a row speaks only up to a temperature")
	}
	if _, written := find(s, "from_c"); written && r.FromC > r.ToC {
		l.fault(s, "from_c %v lies above to_c %v", r.FromC, r.ToC)
	}
	key := fmt.Sprint(r.Material, r.FromC, r.ToC)
	if r.Strength != nil {
		key += fmt.Sprint(r.Strength.From, r.Strength.To, r.Strength.Of)
	}
	if first, again := l.rows[key]; again {
		l.fault(s, "a second row for %s over the same concentration and temperature; the first is on line %d", r.Material, first)
		return
	}
	l.rows[key] = s.node.Line
}

func find(s spot, key string) (pair, bool) {
	for _, p := range pairsOf(s.node) {
		if p.name == key {
			return p, true
		}
	}
	return pair{}, false
}

func (l *linter) strength(s spot, r Range) {
	if r.From < 0 || r.To > 100 || r.From > r.To {
		l.fault(s, "%v to %v per cent is no range; want 0 to 100, the lower end first", r.From, r.To)
	}
}

func (l *linter) equation(s spot, e Equation) {
	if len(e.C) == 0 && e.Equation != "kell" || e.FromK > e.ToK || e.ToK <= 0 {
		l.fault(s, "%s with %d coefficients from %v to %v K cannot be used", e.Equation, len(e.C), e.FromK, e.ToK)
	}
}

// bar checks that a legal bar bars something.
func (l *linter) bar(s spot, b Bar) {
	l.refer(s, Materials, b.Only...)
	if len(b.Contains) == 0 && len(b.Only) == 0 {
		l.fault(s, "the bar names no constituent and no material")
	}
	if b.Regime == "" {
		l.fault(s, "the bar names no regime: say whose law it is")
	}
}

func (l *linter) outlet(s spot, o Outlet) { l.refer(s, Connections, o.Family) }

func (l *linter) material(s spot, m Material) {
	if m.JudgedAs != "" {
		l.refer(s, Materials, m.JudgedAs)
	}
	if m.LowestC != nil && m.HighestC != nil && m.LowestC.Value > m.HighestC.Value {
		l.fault(s, "lowest_c lies above highest_c")
	}
}
