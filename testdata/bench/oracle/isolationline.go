package oracle

import "slices"

func ammoniaTransferUnattended(l *line) {
	if l.under("29 CFR 1910.111") && l.knows(lineSubject, has("line.attended", l.Line.Attended)) && no(l.Line.Attended) {
		l.find(lineSubject)
	}
}

// unattended leaves ammonia under US law to the rule before.
func unattended(l *line) {
	if l.Line.Pressurised && !l.under("29 CFR 1910.111") && l.knows(lineSubject, has("line.attended", l.Line.Attended)) &&
		no(l.Line.Attended) {
		l.find(lineSubject)
	}
}

func flammableLiquefiedGasWithoutStop(l *line) {
	x := &l.Line
	if x.Flammable && x.LiquefiedGas && !x.Toxic && !x.HazardInReach && !x.PassiveShutoff &&
		l.knows(lineSubject, has("line.automatic_stop", x.AutomaticStop), has("line.remote_stop", x.RemoteStop)) &&
		no(x.RemoteStop) && no(x.AutomaticStop) {
		l.find(lineSubject)
	}
}

func noRemoteOrAutomaticStop(l *line) {
	x := &l.Line
	if x.HazardInReach && l.knows(lineSubject, has("line.remote_stop", x.RemoteStop), has("line.automatic_stop", x.AutomaticStop)) &&
		no(x.RemoteStop) && no(x.AutomaticStop) {
		l.find(lineSubject)
	}
}

func toxicFlowWithoutStop(l *line) {
	x := &l.Line
	if x.Toxic && !x.HazardInReach && !x.PassiveShutoff && !l.under("29 CFR 1910.111") &&
		l.knows(lineSubject, has("line.remote_stop", x.RemoteStop), has("line.automatic_stop", x.AutomaticStop)) &&
		no(x.RemoteStop) && no(x.AutomaticStop) {
		l.find(lineSubject)
	}
}

func oxyfuelOutletWithoutBackflowCheck(l *line) {
	if l.under("29 CFR 1910.253") && !hasKind(l.Parts, "check-valve", "regulator") {
		l.find(lineSubject)
	}
}

func roadGasWithoutPassiveShutoff(l *line) {
	if !l.under("49 CFR 173.315") || !l.Line.LiquefiedGas || l.Line.PassiveShutoff {
		return
	}
	if slices.ContainsFunc(l.Fluids, func(f *Fluid) bool { return f.Form == "liquefied-gas" && (f.Flammable || f.Toxic) }) {
		l.find(lineSubject)
	}
}

// places are where two fluids meet, in words. At a receiving point other rules speak.
var places = map[string]string{
	"flush": "in the line, one after the other", "pad": "under the pad gas", "previous": "in what the last job left behind",
	"test": "when the line is tested",
}

// fluidsReactDangerously leaves pads that are forbidden, or are air over what burns, to their own rules.
func fluidsReactDangerously(l *line) {
	for _, m := range l.Meetings {
		where, ok := places[m.Where]
		if ok && l.knows(m.ID, has("meetings.hazardous", m.Hazardous)) && yes(m.Hazardous) && !m.Forbidden && !m.AirPad {
			l.find(m.ID, word("a", m.A), word("b", m.B), word("outcome", outcome(m.Product)), word("place", where))
		}
	}
}

func outcome(product string) string {
	if product == "" {
		return "a dangerous reaction"
	}
	return product
}

// inReach finds points that take the same coupling and hold what reacts, with or without a padlock that is stated.
func (l *line) inReach(padlocked bool) {
	if !l.Line.HazardInReach {
		return
	}
	for _, p := range l.Points {
		if !p.Target && !p.Keyed && l.knows(p.ID, has("points.hazardous", p.Hazardous), said("points.coupling", p.Coupling)) &&
			yes(p.Hazardous) && p.Coupling == "same" && yes(p.Padlocked) == padlocked {
			l.findPoint(p, word("outcome", outcome(p.Product)))
		}
	}
}

func sameCouplingBehindPadlock(l *line) { l.inReach(true) }
func sameCouplingInReach(l *line)       { l.inReach(false) }
