package facts

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

func (b *builder) pair(c *contact, f *resolve.Fluid) {
	p := Pair{Part: c.part, Layer: c.layer, Contact: c.how, Fluid: f.Cat.Name, Material: "not stated", HotCK: b.hot(b.warm(f))}
	if c.material != nil {
		p.Material = c.material.ID
		b.bars(c, f)
	}
	var again bool
	if p.ID, again = b.seen(b.join(c.part, " ", c.layer, " ", p.Material, " in ", f.Key)); again {
		return
	}
	j := b.judged(c, f)
	row := &j.row
	if j.why != "" {
		b.unknown(p.ID, "pairs.rating", j.why, b.pairAsk(c))
		b.f.Pairs.Unlisted = append(b.f.Pairs.Unlisted, p)
		return
	}
	p.Rating, p.Effect, p.ByFamily = row.Rating, row.Effect, row.Family
	p.RowToCK = b.keep(units.CentikelvinDown(units.Celsius(row.ToC)))
	switch row.Rating {
	case "suitable", "limited":
		b.restsOn(j, c.part)
		if row.Rating == "limited" {
			b.f.Pairs.Limited = append(b.f.Pairs.Limited, p)
			return
		}
		b.f.Pairs.Suitable = append(b.f.Pairs.Suitable, p)
	default:
		b.f.Pairs.Unsuitable = append(b.f.Pairs.Unsuitable, p)
	}
}

// seen keeps a pair that two joints share from being filed twice.
func (b *builder) seen(text []byte) (id string, was bool) {
	if b.paired[string(text)] {
		return "", true
	}
	id = string(text)
	b.paired[id] = true
	return id, false
}

// judgement is what is known of one material in one fluid, and the place of the value that stands behind it.
type judgement struct {
	material *catalog.Material
	fluid    *resolve.Fluid
	row      catalog.Row
	why      string
	recorded bool
	value    int
}

// judged keeps the judgement of each pair of material and fluid: a line has few of them, in many places.
func (b *builder) judged(c *contact, f *resolve.Fluid) *judgement {
	for i := range b.judgements {
		if j := &b.judgements[i]; c.material != nil && j.material == c.material && j.fluid == f {
			return j
		}
	}
	j := judgement{material: c.material, fluid: f}
	j.row, j.why = b.row(c, f)
	b.judgements = append(b.judgements, j)
	return &b.judgements[len(b.judgements)-1]
}

func (b *builder) restsOn(j *judgement, part string) {
	if j.recorded {
		b.uses(j.value, part)
		return
	}
	name := j.material.ID + " in " + j.fluid.Cat.Name + " up to " + strconv.FormatFloat(j.row.ToC, 'g', -1, 64) + " °C"
	j.recorded, j.value = true, b.rests(name, name+": "+j.row.Rating, j.row.Origin, part)
}

func (b *builder) pairAsk(c *contact) string {
	if c.material == nil {
		return c.missing
	}
	return "evidence for this material in this fluid: the maker's letter or a soak test"
}

// row is the catalog row, or the site's evidence, that speaks for the pair; or why none does.
func (b *builder) row(c *contact, f *resolve.Fluid) (catalog.Row, string) {
	if c.material == nil {
		return catalog.Row{}, "the " + c.layer + " material of " + c.part + " is not stated"
	}
	if f.Hottest == nil {
		return catalog.Row{}, "how hot " + f.Cat.Name + " can get is not stated"
	}
	rows := b.rowsOf(f.Cat, c.material.ID)
	if len(rows) == 0 && c.material.JudgedAs != "" {
		rows = b.rowsOf(f.Cat, c.material.JudgedAs)
	}
	hot := *b.warm(f)
	row, why := choose(rows, c.material, f, hot)
	e, ok := b.evidenceFor(c.material, f, hot)
	if !ok {
		return row, why
	}
	adverse := slices.Index(order, e.Rating) > slices.Index(order, row.Rating)
	if why != "" || adverse || !row.Standing.Firm() {
		return e, ""
	}
	return row, why
}

// rowsOf are the rows of one material. A row that cannot be read is a fault of the catalog and ends the work.
func (b *builder) rowsOf(f *catalog.Fluid, material string) []catalog.Row {
	rows, err := f.Rows(material)
	if err != nil && b.err == nil {
		b.err = err
	}
	return rows
}

// order of ratings: of several rows that fit, the worst counts.
var order = []string{"suitable", "limited", "unsuitable"}

// choose is the row that covers the concentration and the hottest temperature. An unsuitable row counts hotter too.
func choose(rows []catalog.Row, m *catalog.Material, f *resolve.Fluid, hot units.Temperature) (catalog.Row, string) {
	if len(rows) == 0 {
		return catalog.Row{}, fmt.Sprintf("the catalog says nothing of %s in %s", m.ID, f.Cat.Name)
	}
	if fits := strengthFits(f); !fits.Known || !fits.V {
		return catalog.Row{}, listedFor(f) + ", which the sheet's concentration does not match"
	}
	best, found, limit := catalog.Row{}, false, rows[0].ToC
	nearest := nearestAbove(rows, f, hot)
	for _, r := range rows {
		limit = max(limit, r.ToC)
		if !covers(r, f, hot) || r.ToC > nearest {
			continue // a row for hotter service says nothing where one for this temperature is at hand
		}
		if !found || slices.Index(order, r.Rating) > slices.Index(order, best.Rating) {
			best, found = r, true
		}
	}
	if !found {
		return best, fmt.Sprintf("%s in %s is rated up to %g °C, the line reaches %.0f °C", m.ID, f.Cat.Name, limit, hot.Celsius())
	}
	return best, ""
}

// nearestAbove is the lowest limit of the rows that reach the temperature: what holds up to 40 °C is good at 20 °C though a
// second row says that 120 °C is too hot.
func nearestAbove(rows []catalog.Row, f *resolve.Fluid, hot units.Temperature) float64 {
	nearest := math.Inf(1)
	for _, r := range rows {
		if covers(r, f, hot) && hot.Celsius() <= r.ToC+1e-9 {
			nearest = min(nearest, r.ToC)
		}
	}
	return nearest
}

// covers says whether the row speaks for the strength and the hottest temperature. A fluid whose strength the sheet may
// leave out is pure. An unsuitable row counts for every strength that is not known, and hotter too.
func covers(r catalog.Row, f *resolve.Fluid, hot units.Temperature) bool {
	strength := units.Fraction(1)
	if f.Strength != nil {
		strength = *f.Strength
	}
	if r.Strength != nil && !inRange(r.Strength, strength) {
		return false
	}
	return r.Rating == "unsuitable" || hot.Celsius() <= r.ToC+1e-9
}

// evidenceFor is what the site's own documents say of the pair; of several the worst counts. One that speaks for the
// material must reach the hottest temperature, one that speaks against it counts hotter too.
func (b *builder) evidenceFor(m *catalog.Material, f *resolve.Fluid, hot units.Temperature) (row catalog.Row, found bool) {
	for _, e := range b.l.Evidence {
		s := e.Sheet
		if e.Material.ID != m.ID || e.Fluid.ID != f.Cat.ID || s.Rating.V != "unsuitable" && hot > s.Highest.V+1e-9 {
			continue
		}
		if found && slices.Index(order, s.Rating.V) <= slices.Index(order, row.Rating) {
			continue
		}
		found, row = true, catalog.Row{
			Material: m.ID, Rating: s.Rating.V, ToC: s.Highest.V.Celsius(), Effect: "by " + s.Document.V,
			Origin: catalog.Origin{Standing: catalog.Site, Clause: s.Document.V},
		}
	}
	return row, found
}

// bars files every legal bar of the fluid that names something the wetted material contains.
func (b *builder) bars(c *contact, f *resolve.Fluid) {
	if c.how != "wetted" {
		return
	}
	for i, bar := range f.Cat.Bars {
		if !barred(bar, c.material) {
			continue
		}
		id := fmt.Sprintf("%s %s %s by %s %d", c.part, c.material.ID, f.Key, bar.Regime, i+1)
		if slices.ContainsFunc(b.f.Bars, func(x Bar) bool { return x.ID == id }) {
			continue
		}
		b.f.Bars = append(b.f.Bars, Bar{
			ID: id, Part: c.part, Material: c.material.ID, Fluid: f.Cat.Name, Regime: bar.Regime + " " + bar.Clause,
			Applies: slices.Contains(b.f.Line.Regimes, bar.Regime), Barred: true, Why: bar.Why,
		})
	}
}

func barred(bar catalog.Bar, m *catalog.Material) bool {
	for _, tag := range bar.Contains {
		if slices.Contains(m.Contains, tag) {
			return true
		}
	}
	return len(bar.Only) > 0 && m.Family == "metal" && !slices.Contains(bar.Only, m.ID)
}
