package oracle

// closedBy finds an end that this closes.
func (l *line) closedBy(c *Closure, form string) {
	if c.Form == form {
		l.find(c.ID, word("point", c.ID))
	}
}

// dustCapUnderPressure leaves it to openEndUnderPressure to ask what closes the end.
func dustCapUnderPressure(l *line) {
	for _, c := range l.Closures {
		if c.Pressure {
			l.closedBy(c, "dust-cap")
		}
	}
}

func openEndUnderPressure(l *line) {
	for _, c := range l.Closures {
		if c.Pressure && l.knows(c.ID, said("closures.form", c.Form)) {
			l.closedBy(c, "none")
		}
	}
}

func unusedEndBehindOneValve(l *line) {
	for _, c := range l.Closures {
		if c.Pressure && c.Hazard {
			l.closedBy(c, "valve")
		}
	}
}

// excessFlowBypassAboveLaw: a drill No. 60 is 0.040 in, which is 1.016 mm.
func excessFlowBypassAboveLaw(l *line) {
	if !l.under("29 CFR 1910.111") {
		return
	}
	for _, x := range l.ExcessFlow {
		if l.knows(x.ID, has("excess_flows.bypass_um", x.BypassUM)) && *x.BypassUM > 1016 {
			l.findPart(x.ID, num("have_um", *x.BypassUM), num("need_um", 1016))
		}
	}
}

// excessFlowClosesInService: half as much again as the flow of the transfer is wanted.
func excessFlowClosesInService(l *line) {
	for _, x := range l.ExcessFlow {
		if x.Credited && l.knows(x.ID, has("excess_flows.duty_flow_mlps", x.DutyMLPS)) && x.CloseMLPS != nil &&
			2**x.CloseMLPS < 3**x.DutyMLPS {
			l.findPart(x.ID, num("closing_mlps", *x.CloseMLPS), num("duty_mlps", *x.DutyMLPS))
		}
	}
}

// excessFlowNeverCloses: a flow that is equal does not close it.
func excessFlowNeverCloses(l *line) {
	for _, x := range l.ExcessFlow {
		if x.Credited && l.knows(x.ID, has("excess_flows.closing_flow_mlps", x.CloseMLPS),
			has("excess_flows.broken_flow_mlps", x.BrokenMLPS)) && *x.BrokenMLPS <= *x.CloseMLPS {
			l.findPart(x.ID, num("have_mlps", *x.BrokenMLPS), num("need_mlps", *x.CloseMLPS))
		}
	}
}
