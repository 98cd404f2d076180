package oracle

import "strings"

// newProcess says whether the law on process safety wants this change managed: every one that is not known to be in kind.
func (l *line) newProcess() bool { return l.Line.ChangeNotInKind && l.under("29 CFR 1910.119") }

// changeRecordIncomplete names what is known to be left out, also where other things are not known.
func changeRecordIncomplete(l *line) {
	x := &l.Line
	if !l.newProcess() {
		return
	}
	l.knows(lineSubject, has("line.change_states_basis", x.ChangeBasis), has("line.change_states_effects", x.ChangeEffects),
		has("line.change_states_procedures", x.ChangeProcedure))
	var missing []string // in the order of their letters
	for _, m := range []struct {
		what   string
		stated *bool
	}{{"the changes to procedures", x.ChangeProcedure}, {"the effects on safety and health", x.ChangeEffects}, {"the technical basis", x.ChangeBasis}} {
		if no(m.stated) {
			missing = append(missing, m.what)
		}
	}
	if len(missing) > 0 {
		l.find(lineSubject, word("missing", strings.Join(missing, ", ")))
	}
}

func changeWithoutTraining(l *line) {
	if l.newProcess() && l.knows(lineSubject, has("line.change_trained", l.Line.ChangeTrained)) && no(l.Line.ChangeTrained) {
		l.find(lineSubject)
	}
}
