package population

import "lineworthy/check/facts"

// vary makes one line of the kind of plant out of a shipped one.
func (m *Maker) vary(f *facts.Facts) {
	m.heal(f)
	faults := 0
	switch n := m.chance.IntN(10); {
	case m.kind == Sick || m.kind == Mixed && n == 0:
		m.forget(f, 100)
		faults = 4 + m.chance.IntN(8)
	case m.kind == Mixed && n < 3:
		m.forget(f, 50)
		faults = 1
	default:
		m.forget(f, 15)
	}
	for range faults {
		m.spoil(f)
	}
}

// between is a whole number from low to high.
func (m *Maker) between(low, high int64) int64 { return low + m.chance.Int64N(max(high-low+1, 1)) }

// heal keeps every date, gives every part something in reserve, and takes out what is wrong with the shipped line.
func (m *Maker) heal(f *facts.Facts) {
	for i := range f.Hoses {
		h := &f.Hoses[i]
		set(&h.AgeDays, m.between(30, 1400))
		set(&h.TestedDays, m.between(1, 170))
		set(&h.InspectedDays, m.between(1, 28))
		set(&h.ResistanceDays, m.between(1, 170))
		set(&h.TagMatches, true)
		set(&h.ResistanceOhm, m.between(1, 90))
		h.Defects = []string{}
	}
	for i := range f.Capacities {
		if c := &f.Capacities[i]; c.RatedKPa.Known && c.DemandKPa.Known {
			c.RatedKPa.V = max(c.RatedKPa.V, c.DemandKPa.V*(110+m.between(0, 150))/100)
		}
	}
	for i := range f.Limits {
		l := &f.Limits[i]
		if l.HottestCK.Known && l.HighestCK.Known {
			l.HottestCK.V = min(l.HottestCK.V-m.between(0, 900), l.HighestCK.V-100)
		}
		if l.ColdestCK.Known && l.LowestCK.Known {
			l.ColdestCK.V = max(l.ColdestCK.V, l.LowestCK.V+100)
		}
	}
	for i := range f.Points {
		set(&f.Points[i].SameFluid, true)
		set(&f.Points[i].Marked, true)
		set(&f.Points[i].Hazardous, false)
	}
	f.Line.HazardInReach = false
	set(&f.Line.RemoteStop, true)
	set(&f.Line.Attended, true)
	f.Pairs.Suitable = append(f.Pairs.Suitable, rated(f.Pairs.Unsuitable)...)
	f.Pairs.Suitable = append(f.Pairs.Suitable, rated(f.Pairs.Limited)...)
	f.Pairs.Unsuitable, f.Pairs.Limited, f.Bars = nil, nil, nil
}

func rated(pairs []facts.Pair) []facts.Pair {
	for i := range pairs {
		pairs[i].Rating = "suitable"
	}
	return pairs
}

// set changes a fact that is known.
func set[F facts.Int | facts.Bool, V int64 | bool](f *F, v V) {
	switch f := any(f).(type) {
	case *facts.Int:
		if n, ok := any(v).(int64); ok && f.Known {
			f.V = n
		}
	case *facts.Bool:
		if b, ok := any(v).(bool); ok && f.Known {
			f.V = b
		}
	}
}

// forget leaves that many per cent of the values without a paper; the others have one.
func (m *Maker) forget(f *facts.Facts, percent int) {
	for i := range f.Values {
		if v := &f.Values[i]; v.Standing != "site" && v.Standing != "published" && m.chance.IntN(100) >= percent {
			v.Standing, v.Source = "site", ""
			v.Clause = "papers of the plant"
		}
	}
}

// spoil does one thing that goes wrong in plants.
func (m *Maker) spoil(f *facts.Facts) {
	switch m.chance.IntN(9) {
	case 0:
		each(m, f.Hoses, func(h *facts.Hose) { set(&h.TestedDays, m.between(400, 900)) })
	case 1:
		each(m, f.Hoses, func(h *facts.Hose) { set(&h.AgeDays, m.between(4400, 6000)) })
	case 2:
		each(m, f.Capacities, func(c *facts.Capacity) {
			if c.RatedKPa.Known && c.DemandKPa.Known {
				c.DemandKPa.V = c.RatedKPa.V + m.between(1, 900)
			}
		})
	case 3:
		each(m, f.Limits, func(l *facts.Limit) {
			if l.HottestCK.Known && l.HighestCK.Known {
				l.HottestCK.V = l.HighestCK.V + m.between(1, 5000)
			}
		})
	case 4:
		each(m, f.Joints, func(j *facts.Joint) { j.Size = "differs" })
	case 5:
		each(m, f.Joints, func(j *facts.Joint) { set(&j.SealCount, m.between(2, 3)) })
	case 6:
		each(m, f.Hoses, func(h *facts.Hose) { h.Defects = []string{"cover-damaged", "kinked"}[:m.between(1, 2)] })
	case 7:
		if n := len(f.Pairs.Suitable); n > 0 {
			i := m.chance.IntN(n)
			bad := f.Pairs.Suitable[i]
			bad.Rating, bad.Effect = "unsuitable", "attacked"
			f.Pairs.Suitable = append(f.Pairs.Suitable[:i:i], f.Pairs.Suitable[i+1:]...)
			f.Pairs.Unsuitable = append(f.Pairs.Unsuitable, bad)
		}
	case 8:
		each(m, f.Capacities, func(c *facts.Capacity) {
			if c.RatedKPa.Known {
				c.RatedKPa = facts.Int{}
				f.Unknowns = append(f.Unknowns, facts.Unknown{Subject: c.ID, Fact: "capacities.rated_kpa", Why: "the plate cannot be read", Ask: "the maker"})
			}
		})
	}
}

// each changes one of several, if there are any.
func each[T any](m *Maker, all []T, change func(*T)) {
	if len(all) > 0 {
		change(&all[m.chance.IntN(len(all))])
	}
}
