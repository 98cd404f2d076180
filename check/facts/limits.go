package facts

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

func (b *builder) limits() {
	b.f.Limits = b.limitSpace[:0]
	for _, r := range b.l.Runs {
		for _, p := range r.Parts {
			b.partLimits(p)
		}
		for _, j := range r.Joints {
			b.jointLimits(j)
		}
		b.steamLimits(r)
	}
	b.f.Limits, b.limitSpace = cut(b.f.Limits), b.f.Limits
}

// limit files one temperature range, and notes why a side of it is not known.
func (b *builder) limit(r *resolve.Run, part, what string, low, high *units.Temperature, seal bool, ask string) {
	h := b.heat(r)
	l := Limit{ID: part + " " + what, Part: part, What: what, Seal: seal, HottestCK: h.hottest, ColdestCK: h.coldest, VentedCK: h.vented}
	if high != nil {
		l.HighestCK = b.keep(units.CentikelvinDown(*high))
	} else {
		b.unknown(l.ID, "limits.highest_ck", "the highest temperature for "+part+" ("+what+") is not known", ask)
	}
	if low != nil {
		l.LowestCK = b.keep(units.CentikelvinUp(*low))
	} else {
		b.unknown(l.ID, "limits.lowest_ck", "the lowest temperature for "+part+" ("+what+") is not known", ask)
	}
	b.f.Limits = append(b.f.Limits, l)
}

// heat is how hot and cold a run gets, as facts: every limit of the run names them.
type heat struct {
	run                      *resolve.Run
	hottest, coldest, vented Int
}

func (b *builder) heat(r *resolve.Run) heat {
	for _, h := range b.heats {
		if h.run == r {
			return h
		}
	}
	h := heat{r, b.hot(b.everHottest(r)), b.cold(b.coldest(r)), b.vented(r)}
	b.heats = append(b.heats, h)
	return h
}

// vented is how cold a liquefied gas of the run makes what it touches when it is let off to the air: its boiling point.
func (b *builder) vented(r *resolve.Run) Int {
	var low *units.Temperature
	for _, f := range r.Fluids {
		if f.Cat.Form != "liquefied-gas" || f.Props.VapourP == nil {
			continue
		}
		if t, err := measure.BoilingPoint(equation(f.Props.VapourP), b.l.Ambient); err == nil {
			low = lower(low, &t)
		}
	}
	return b.cold(low)
}

func (b *builder) partLimits(p *resolve.Part) {
	s := p.Sheet
	if s.Kind.V == "weight" {
		return
	}
	if s.Kind.V == "hose" {
		low, high := b.hoseSpan(p)
		b.limit(p.Run, p.ID, "hose class", low, high, false, unless(low != nil && high != nil, "lowest and highest of ", p.ID, ", with evidence"))
		for _, l := range p.Layers {
			if l.Role != "cover" && l.Material != nil && !vouched(l) {
				b.materialLimit(p.Run, p.ID, l.Role, l.Material, false)
			}
		}
	} else if s.Kind.V != "gauge" {
		b.limit(p.Run, p.ID, "stated", ptr(&s.Lowest), ptr(&s.Highest), false, unless(s.Lowest.Set && s.Highest.Set, "lowest and highest of ", p.ID))
	}
	for _, m := range p.Wetted {
		b.materialLimit(p.Run, p.ID, m.ID, m, false)
	}
	if p.Body != nil {
		b.materialLimit(p.Run, p.ID, "body", p.Body, false)
	}
}

// vouched says whether the class itself lists the material for this layer: then the class's temperature range speaks for
// it, as for a steam hose, whose compound outlasts the polymer's ordinary limit.
func vouched(l resolve.Layer) bool {
	return l.Material != nil && slices.Contains(l.Options, l.Material.ID)
}

func ptr(o *sheet.Of[units.Temperature]) *units.Temperature {
	if !o.Set {
		return nil
	}
	return &o.V
}

// hoseSpan is the class's range, narrowed by what is printed on the hose, widened only with a document.
func (b *builder) hoseSpan(p *resolve.Part) (low, high *units.Temperature) {
	if p.Hose != nil {
		low, high = b.span(p.Hose.Temperature, p.Hose.ID, p.Hose.Name, p.ID)
	}
	s := p.Sheet
	if t := ptr(&s.Highest); t != nil && (s.Evidence.Set || high == nil || *t < *high) {
		high = t
	}
	if t := ptr(&s.Lowest); t != nil && (s.Evidence.Set || low == nil || *t > *low) {
		low = t
	}
	return low, high
}

// span is the temperature range of a row of the catalog, on which the part rests.
func (b *builder) span(s *catalog.Span, row, name, part string) (low, high *units.Temperature) {
	if s == nil {
		return nil, nil
	}
	if !b.known(part, row, " temperature") {
		b.rests(row+" temperature", "temperature range of "+name, s.Origin, part)
	}
	return celsius(s.LowestC), celsius(s.HighestC)
}

func celsius(c *float64) *units.Temperature {
	if c == nil {
		return nil
	}
	t := units.Celsius(*c)
	return &t
}

// materialLimit is the range of a material. Metals without a stated range are left to the part's own figures.
func (b *builder) materialLimit(r *resolve.Run, part, role string, m *catalog.Material, seal bool) {
	if m.Family == "metal" || m.Family == "reinforcement" {
		if m.LowestC == nil || m.HighestC == nil {
			return
		}
	}
	var low, high *units.Temperature
	if m.LowestC != nil {
		low = celsius(&m.LowestC.Value)
		b.restsOnRange(m, m.LowestC, part)
	}
	if m.HighestC != nil {
		high = celsius(&m.HighestC.Value)
		b.restsOnRange(m, m.HighestC, part)
	}
	b.limit(r, part, role+" "+m.ID, low, high, seal, unless(low != nil && high != nil, "the maker's temperature range of ", m.ID))
}

// restsOnRange records the range of a material; its two sides are one value, with the origin of the one that comes first.
func (b *builder) restsOnRange(m *catalog.Material, side *catalog.Number, part string) {
	for _, k := range b.ranges {
		if k.material == m {
			b.uses(k.value, part)
			return
		}
	}
	at := b.rests(m.ID+" temperature", "temperature range of "+m.Name+" ("+m.ID+")", side.Origin, part)
	b.ranges = append(b.ranges, materialRange{m, at})
}

// materialRange is the place of the value that a material's range is.
type materialRange struct {
	material *catalog.Material
	value    int
}

// jointLimits are the ranges of both ends' standards, and of the seal's kind and material.
func (b *builder) jointLimits(j *resolve.Joint) {
	for _, e := range []*resolve.End{j.A, j.B} {
		own := e.Material != nil && e.Material.Family != "metal" && (e.Part == nil || e.Material != e.Part.Body)
		ranged := e.Family != nil && e.Family.Temperature != nil
		if !own && !ranged {
			continue
		}
		name := e.Owner + " " + e.Name
		if own {
			b.materialLimit(j.Run, name, "end", e.Material, false)
		}
		if !ranged {
			continue
		}
		low, high := b.span(e.Family.Temperature, e.Family.ID, e.Family.Name, e.Owner)
		if low != nil && high != nil {
			b.limit(j.Run, name, "end", low, high, false, "")
		}
	}
	for _, s := range j.Seals {
		if s.Material != nil {
			b.materialLimit(j.Run, s.ID, "seal", s.Material, true)
		}
		if k := s.Kind; k != nil && k.HighestC != nil {
			low := celsius(numberOf(k.LowestC))
			if low == nil && s.Material != nil {
				low = celsius(numberOf(s.Material.LowestC))
			}
			if !b.known(s.ID, k.ID, " temperature") {
				b.rests(k.ID+" temperature", "temperature limit of "+k.Name, k.HighestC.Origin, s.ID)
			}
			b.limit(j.Run, s.ID, "kind "+k.ID, low, celsius(&k.HighestC.Value), true, "the maker's temperature range of the seal")
		}
	}
}

func numberOf(n *catalog.Number) *float64 {
	if n == nil {
		return nil
	}
	return &n.Value
}
