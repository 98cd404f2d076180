package facts

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// reaches says, for each material that a fluid of the run meets, up to which temperature it is known to bear it.
func (b *builder) reaches(r *resolve.Run) (out []Reach) {
	seen := map[string]bool{}
	for _, c := range contacts(nil, r) {
		if c.material == nil {
			continue
		}
		for _, f := range r.Fluids {
			id := c.part + " " + c.layer + " " + c.material.ID + " " + f.Key
			if seen[id] || c.how == "permeated" && !b.permeates(f, &c) {
				continue
			}
			seen[id] = true
			out = append(out, b.reach(r, c, f))
		}
	}
	return out
}

// reach climbs from one row of the pair to the next hotter one for as long as the rating there allows the use. A row that
// speaks against the material counts hotter too, so the climb ends at the first of those.
func (b *builder) reach(r *resolve.Run, c contact, f *resolve.Fluid) Reach {
	out := Reach{Part: c.part, Layer: c.layer, Material: c.material.ID, Fluid: f.Cat.Name, Place: placeOf(r, c.part)}
	for _, t := range b.rowEnds(c.material, f) {
		at := *f
		at.Hottest = &t
		row, why := b.row(&c, &at)
		if why != "" {
			continue // a colder row is not reached on a hotter site
		}
		if row.Rating == "unsuitable" {
			return out
		}
		out.High, out.Limited = &t, row.Rating == "limited"
	}
	return out
}

// rowEnds are the temperatures up to which rows and evidence of the pair speak, ascending.
func (b *builder) rowEnds(m *catalog.Material, f *resolve.Fluid) (out []units.Temperature) {
	for _, id := range []string{m.ID, m.JudgedAs} {
		for _, row := range b.rowsOf(f.Cat, id) {
			out = append(out, units.Celsius(row.ToC))
		}
	}
	for _, e := range b.l.Evidence {
		if e.Material.ID == m.ID && e.Fluid.ID == f.Cat.ID {
			out = append(out, e.Sheet.Highest.V)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// placeOf finds where a part, an end or a seal of the run stands; what is not found counts as everywhere.
func placeOf(r *resolve.Run, name string) Place {
	for i, p := range r.Parts {
		switch name {
		case p.ID:
			return part(r, i)
		case p.ID + " inlet":
			return Place{r.Key, 2 * i, 2 * i}
		case p.ID + " outlet":
			return Place{r.Key, 2*i + 1, 2*i + 1}
		}
	}
	for n, j := range r.Joints {
		for _, s := range j.Seals {
			if s.ID == name {
				return joint(r, n)
			}
		}
	}
	for n, e := range []*resolve.End{r.SourceEnd, r.TargetEnd} {
		if name == e.Owner+" "+e.Name {
			return Place{r.Key, 2 * len(r.Parts) * n, 2 * len(r.Parts) * n}
		}
	}
	return Place{r.Key, 0, 2 * len(r.Parts)}
}
