package sequence

import (
	"slices"

	"lineworthy/check/resolve"
)

// headPerMetre is the pressure of a metre of water, kPa; other liquids need no better for the question which way they run.
const headPerMetre = 10

func (m *Model) run(r *resolve.Run) *run {
	out := &run{
		key: r.Key, r: r, hoses: map[string]bool{}, pumps: map[string]bool{}, shutoff: map[string]int64{},
		liquid: carriesLiquid(r), headKPa: int64(float64(r.Sheet.Source.Head.V) * headPerMetre), quantityM3: float64(r.Sheet.Quantity.V),
	}
	if r.Source != nil {
		out.source = m.vessels[r.Source.Key]
	}
	if r.Target != nil {
		out.to = m.vessels[r.Target.Key]
	}
	if s := &r.Sheet.Source; s.Cylinder.Set {
		out.supplyKPa = kpa(s.Cylinder.V.Gauge(m.line.Ambient))
	} else if s.Supply.Set {
		out.supplyKPa = kpa(s.Supply.V.Gauge(m.line.Ambient))
	}
	out.product, out.flushes = carried(r)
	for _, f := range r.Fluids {
		gas := isGas(f)
		out.toxic = out.toxic || resolve.Yes(f.Cat.Hazards.Toxic)
		out.oxygen = out.oxygen || gas && f.Cat.ID != "air" && resolve.Yes(f.Cat.Hazards.Oxidiser)
		if !gas && resolve.Yes(f.Cat.Hazards.Flammable) && out.to != nil {
			out.to.flammable = true
		}
	}
	m.cut(out)
	return out
}

// carried parts what a run is for from what it is flushed with.
func carried(r *resolve.Run) (product string, flushes []*resolve.Fluid) {
	for _, f := range r.Fluids {
		switch {
		case f.Role == "flush":
			flushes = append(flushes, f)
		case product == "" && f.Role != "previous" && f.Role != "test":
			product = f.Key
		}
	}
	return product, flushes
}

func isGas(f *resolve.Fluid) bool {
	return slices.Contains([]string{"compressed-gas", "dissolved-gas", "vapour"}, f.Cat.Form)
}

func carriesLiquid(r *resolve.Run) bool {
	return slices.ContainsFunc(r.Fluids, func(f *resolve.Fluid) bool { return !isGas(f) })
}

// cut parts the run at its devices. Where the sheet shows no valve before the first hose, the one of the source stands in.
func (m *Model) cut(out *run) {
	out.cells = []*cell{{}}
	add := func(d *device) {
		out.devices = append(out.devices, d)
		out.cells = append(out.cells, &cell{})
	}
	if out.source == nil || !valveFirst(out.r) {
		add(&device{id: "source", kind: "source"})
	}
	for _, p := range out.r.Parts {
		switch p.Sheet.Kind.V {
		case "valve":
			add(&device{id: p.ID, kind: "valve"})
		case "regulator":
			add(&device{id: p.ID, kind: "regulator", open: true, sheetKPa: kpa(p.Sheet.Set.V.Gauge(m.line.Ambient)), stated: p.Sheet.Set.Set})
		case "check-valve":
			add(&device{id: p.ID, kind: "check-valve", open: true})
		default:
			out.place(m, p)
		}
	}
}

func (r *run) place(m *Model, p *resolve.Part) {
	c := r.cells[len(r.cells)-1]
	c.parts = append(c.parts, p)
	switch p.Sheet.Kind.V {
	case "hose":
		r.hoses[p.ID] = false
	case "pump":
		r.pumps[p.ID] = false
		r.shutoff[p.ID] = kpa(p.Sheet.Shutoff.V.Gauge(m.line.Ambient))
	case "relief":
		c.relieved = true
	}
}

func valveFirst(r *resolve.Run) bool {
	for _, p := range r.Parts {
		switch p.Sheet.Kind.V {
		case "valve":
			return true
		case "hose":
			return false
		}
	}
	return false
}

// start is the pressure at the source, kPa gauge, and whether anything can come from there.
func (r *run) start() int64 {
	if r.source == nil {
		return r.supplyKPa
	}
	return r.source.kpa + r.headKPa
}

// passes says whether a device lets through forward.
func (d *device) passes() bool { return d.open && (d.kind != "regulator" || d.setKPa > 0) }

// passesBack says whether it lets through against the flow.
func (d *device) passesBack() bool {
	return d.passes() && d.kind != "check-valve" && d.kind != "regulator"
}

// parted names a hose of the cell that is not connected.
func (r *run) parted(c *cell) string {
	for _, p := range c.parts {
		if on, hose := r.hoses[p.ID]; hose && !on {
			return p.ID
		}
	}
	return ""
}
