package oracle

import "math"

// roomOxygen finds rooms where less oxygen than that is left, but no less than another figure.
func (l *line) roomOxygen(least, from int64) {
	for _, r := range l.Releases {
		if r.Asphyxiant && l.knows(r.ID, has("releases.oxygen_permille", r.OxygenPermille)) &&
			*r.OxygenPermille < least && *r.OxygenPermille >= from {
			l.find(r.ID, num("have_permille", *r.OxygenPermille), num("need_permille", least), word("run", r.ID))
		}
	}
}

func oxygenDepletionInRoom(l *line) { l.roomOxygen(180, math.MinInt64) }
func oxygenLowInRoom(l *line)       { l.roomOxygen(195, 180) }

func oxygenNotClean(l *line) {
	for _, p := range l.Parts {
		if p.Oxygen && l.knows(p.ID, has("parts.oxygen_clean", p.OxygenClean)) && no(p.OxygenClean) {
			l.findPart(p.ID)
		}
	}
}

func passiveShutoffActsOnSeparationOnly(l *line) {
	for _, p := range l.Parts {
		if p.Separation {
			l.findPart(p.ID)
		}
	}
}

func restraintTooWeak(l *line) {
	for _, r := range l.Releases {
		if r.WhipN != nil && below(r.RestraintN, *r.WhipN) {
			l.find(r.ID, num("have_n", *r.RestraintN), num("need_n", *r.WhipN), word("run", r.ID))
		}
	}
}

// whipNotRestrained: from 3/4 in and above 7 bar.
func whipNotRestrained(l *line) {
	for _, r := range l.Releases {
		if !r.Restrained && l.knows(r.ID, has("releases.bore_mm", r.BoreMM), has("releases.pressure_kpa", r.Pressure)) &&
			*r.BoreMM >= 19 && *r.Pressure > 700 {
			l.find(r.ID, num("bore_mm", *r.BoreMM), num("pressure_kpa", *r.Pressure), word("run", r.ID))
		}
	}
}
