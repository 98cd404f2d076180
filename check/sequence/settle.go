package sequence

// settle lets pressure and liquid go where the open devices let them. Gas runs come first: what they push drives the rest.
func (m *Model) settle() {
	for _, r := range m.runs {
		if !r.liquid {
			r.spread()
		}
	}
	for _, r := range m.runs {
		if r.liquid {
			r.spread()
		}
	}
}

func (r *run) spread() {
	for _, c := range r.cells {
		c.live = false
	}
	p := r.start()
	r.reachesTarget, r.deliveredKPa = false, 0
	for i, c := range r.cells {
		p += r.pumped(c)
		c.live, c.kpa = true, p
		r.reach(c, p)
		if r.parted(c) != "" {
			break
		}
		if i == len(r.devices) {
			r.arrive(p)
			break
		}
		d := r.devices[i]
		if !d.passes() {
			break
		}
		if d.kind == "regulator" {
			p = min(p, d.setKPa)
		}
	}
	r.relax()
}

// reach lets the liquid of the source into a cell that stands open to it. What is left of a flush there mixes with it.
func (r *run) reach(c *cell, p int64) {
	if !r.liquid || r.source != nil && !r.headless() && r.start() <= 0 && p <= 0 {
		return
	}
	c.mixed = c.mixed || c.liquid && c.holds != r.product && c.holds != ""
	if c.wet != r.product {
		c.met = c.wet
	}
	c.liquid, c.holds, c.wet, c.blown = true, r.product, r.product, ""
}

// headless says whether nobody stated how high the liquid stands: then it counts as running out of what is opened.
func (r *run) headless() bool { return r.source != nil && !r.r.Sheet.Source.Head.Set }

func (r *run) pumped(c *cell) (sum int64) {
	for _, p := range c.parts {
		if r.pumps[p.ID] {
			sum += r.shutoff[p.ID]
		}
	}
	return sum
}

// arrive is the destination: gas raises a closed one, liquid does not in this play.
func (r *run) arrive(p int64) {
	r.reachesTarget, r.deliveredKPa = true, p
	if r.to == nil || r.to.open || r.liquid {
		return
	}
	r.to.kpa, r.to.padded = max(r.to.kpa, p), true
}

// relax gives what is open to the destination, and no longer to the source, the pressure of the destination.
func (r *run) relax() {
	back := 0
	if r.to != nil {
		back = int(r.to.kpa)
	}
	for i := len(r.cells) - 1; i >= 0; i-- {
		c := r.cells[i]
		if c.live || r.parted(c) != "" {
			return
		}
		c.kpa = int64(back)
		if i > 0 && !r.devices[i-1].passesBack() {
			return
		}
	}
}

// joined are the cells that stand open to cell i, whichever way, and whether the source and the destination do.
func (r *run) joined(i int) (from, to int, source, target bool) {
	from, to = i, i
	for from > 0 && r.devices[from-1].passes() {
		from--
	}
	for to < len(r.devices) && r.devices[to].passesBack() {
		to++
	}
	return from, to, from == 0, to == len(r.devices)
}
