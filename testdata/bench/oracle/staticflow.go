package oracle

func splashFilling(l *line) {
	for _, p := range l.Points {
		if p.Target && p.Flammable && p.Liquid && p.OpenPoint && l.knows(p.ID, said("points.entry", p.Entry)) && p.Entry == "splash" {
			l.findPoint(p)
		}
	}
}

// findCharge reports a flow of a liquid that burns and holds charge; one of unknown conductivity may.
func (l *line) findCharge(f *Flow, part string, figures ...figure) {
	switch {
	case f.Accumulator == nil:
		l.findAt(f.ID, part, "", append(figures, word("charge", "may hold charge, its conductivity being unknown,"), word("run", f.ID))...)
	case *f.Accumulator:
		l.findAt(f.ID, part, "", append(figures, word("charge", "holds charge"), word("run", f.ID))...)
	}
}

func chargeRateNotStated(l *line) {
	for _, f := range l.Flows {
		if !f.Stated && f.Flammable {
			l.findCharge(f, "")
		}
	}
}

// startsTooFast: 1 m/s until the inlet is covered.
func startsTooFast(l *line) {
	for _, f := range l.Flows {
		if f.Stated && f.Flammable && f.OpenTop && l.knows(f.ID, has("flows.velocity_mmps", f.VelocityMMPS)) && *f.VelocityMMPS > 1000 {
			l.findCharge(f, "", num("have_mmps", *f.VelocityMMPS), num("need_mmps", 1000))
		}
	}
}

// tooLittleRelaxation: 30 s behind a fine filter.
func tooLittleRelaxation(l *line) {
	for _, f := range l.Flows {
		if f.Stated && f.Flammable && f.FineFilter && l.knows(f.ID, has("flows.residence_ms", f.ResidenceMS)) && *f.ResidenceMS < 30000 {
			l.findCharge(f, "", num("have_ms", *f.ResidenceMS), num("need_ms", 30000))
		}
	}
}

// velocityAboveLimit: 7 m/s, and 0.5 m2/s as speed times bore, in the narrowest part.
func velocityAboveLimit(l *line) {
	for _, f := range l.Flows {
		if f.Stated && f.Flammable &&
			l.knows(f.ID, has("flows.velocity_mmps", f.VelocityMMPS), has("flows.velocity_bore_mm2ps", f.ProductMM2PS)) &&
			(*f.VelocityMMPS > 7000 || *f.ProductMM2PS > 500_000) {
			l.findCharge(f, f.Part, num("product_limit_mm2ps", 500_000), num("product_mm2ps", *f.ProductMM2PS),
				num("speed_limit_mmps", 7000), num("speed_mmps", *f.VelocityMMPS))
		}
	}
}

// notBonded are vessels of a liquid that burns that are known to be without earth.
func (l *line) notBonded(found func(*Vessel)) {
	for _, v := range l.Vessels {
		if v.Flammable && v.Liquid && l.knows(v.ID, has("vessels.bonded", v.Bonded)) && no(v.Bonded) {
			found(v)
		}
	}
}

// vesselNotBonded leaves what US road law speaks of to the next: all but cargo tanks.
func vesselNotBonded(l *line) {
	law := l.under("49 CFR 177.837")
	l.notBonded(func(v *Vessel) {
		if !law || v.Kind == "tanker" {
			l.findPart(v.ID)
		}
	})
}

func vesselNotBondedByLaw(l *line) {
	if !l.under("49 CFR 177.837") {
		return
	}
	l.notBonded(func(v *Vessel) {
		if v.Kind != "tanker" {
			l.findPart(v.ID)
		}
	})
}
