package sequence

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"lineworthy/check/resolve"
)

// toDrain is the word of to for a flush that leaves the line before the destination.
const toDrain = "drain"

// rinse pushes a flush into the stretch a part stands in. It goes in behind what is closed towards the source, and out
// into the destination or, before it, into a drain.
func (p *play) rinse(s Step) error {
	r, i, ok := p.place(s.Item)
	if !ok {
		return p.unknown(s, "a part", p.partNames())
	}
	f, err := r.flushWith(s.Fluid)
	if err != nil {
		return err
	}
	if s.To != "" && s.To != toDrain {
		return fmt.Errorf("flush: to: %q: write drain, or leave it away when the flush goes into the destination", s.To)
	}
	q, err := amount(s, 0)
	if err != nil {
		return err
	}
	from, to, source, target := r.joined(i)
	p.rinseWay(r, s, i, source, target)
	if !source {
		p.rinsed(r, f, r.cells[from:to+1], s.To == toDrain)
	}
	if isGas(f) {
		p.blown(r, s)
	} else {
		p.rinseAmount(r, s, q, from, to)
	}
	p.shown(r) // nothing is shut in yet: the way out stands open until the next step
	return nil
}

// flushWith is the flush of that name on the sheet, or the only one.
func (r *run) flushWith(key string) (*resolve.Fluid, error) {
	if len(r.flushes) == 0 {
		return nil, errors.New("flush: the sheet has no flush for " + r.key + ": add a fluid with role: flush, name it under carries, and have the line judged")
	}
	if key == "" && len(r.flushes) == 1 {
		return r.flushes[0], nil
	}
	var names []string
	for _, f := range r.flushes {
		names = append(names, f.Key)
	}
	if i := slices.Index(names, key); i >= 0 {
		return r.flushes[i], nil
	}
	return nil, fmt.Errorf("flush: fluid: %q is not a flush of %s: use one of %v", key, r.key, names)
}

// rinseWay is how the flush gets in and out.
func (p *play) rinseWay(r *run, s Step, i int, source, target bool) {
	from, to, _, _ := r.joined(i)
	for _, c := range r.cells[from : to+1] {
		if hose := r.parted(c); hose != "" {
			p.fault(NotConnected, hose, "the flush comes to "+hose+", which is not connected")
		}
	}
	switch {
	case source:
		p.fault(FlushIntoSource, s.Item, s.Item+" stands open to its source: the flush can get into it, or product into the flush")
	case s.To == toDrain && target:
		p.fault(FlushAstray, s.Item, s.Item+" stands open to the destination, and the flush is meant for the drain")
	case s.To != toDrain && !target:
		p.fault(NoWay, s.Item, "the flush cannot get from "+s.Item+" into the destination: "+name(r, r.devices[to])+" is closed")
	}
}

// rinsed leaves the flush in the cells.
func (p *play) rinsed(r *run, f *resolve.Fluid, cells []*cell, drained bool) {
	for _, c := range cells {
		if drained && c.liquid && c.holds == r.product {
			p.fault(FlushedProduct, r.key, "product still stands in "+r.key+" when the flush goes to the drain")
		}
		p.react(r, c.wet, f.Key)
		c.wetted(r, f)
	}
}

// wetted leaves a flush in the cell. A gas dries what is left of a flush, and leaves a film of product.
func (c *cell) wetted(r *run, f *resolve.Fluid) {
	c.kpa, c.liquid, c.holds = 0, !isGas(f), f.Key
	switch {
	case c.liquid:
		c.wet, c.blown = f.Key, ""
	case c.wet != r.product:
		c.wet, c.blown = "", f.Key
	default:
		c.blown = f.Key
	}
}

// blown is a flush of gas: no level rises, but a closed destination comes under its pressure. That of steam is in the sheet,
// and judged with the line.
func (p *play) blown(r *run, s Step) {
	p.effort(Effort{Step: p.at, Run: r.key, Says: "time not known: blow until nothing but the gas comes out"})
	if v := r.to; s.To != toDrain && v != nil && !v.open && !r.steams() && !p.relieves(v) {
		p.open(fmt.Sprintf("what %s comes to when gas is blown into it in step %d: it is not said to be open; write to: drain, or show in the sheet the vent that is open", v.id, p.at))
	}
}

func (p *play) rinseAmount(r *run, s Step, q float64, from, to int) {
	least, missing := r.content(from, to)
	switch {
	case q == 0 && missing != "":
		p.open(fmt.Sprintf("how much flush step %d takes: write quantity in the step (length and size of %s would tell how much the stretch holds)", p.at, missing))
	case q == 0:
		p.open(fmt.Sprintf("how much flush step %d takes: write quantity in the step; the stretch holds about %s", p.at, litres(least)))
	case q < least:
		p.fault(FlushShort, s.Item, fmt.Sprintf("%s of flush cannot fill the stretch, which holds about %s", litres(q), litres(least)))
	}
	if q == 0 {
		return
	}
	p.moves(r, q, "")
	if s.To != toDrain && r.to != nil && r.to.levels {
		p.fill(r, q, "")
	}
}

// content is what the hoses and pipes of the cells hold, by their nominal bore; or the part whose size is not known.
func (r *run) content(from, to int) (m3 float64, missing string) {
	for _, c := range r.cells[from : to+1] {
		for _, p := range c.parts {
			if k := p.Sheet.Kind.V; k != "hose" && k != "pipe" {
				continue
			}
			d := float64(p.Sheet.Size.V.Nominal())
			if !p.Sheet.Size.Set || !p.Sheet.Length.Set || d == 0 {
				return 0, p.ID
			}
			m3 += math.Pi / 4 * d * d * float64(p.Sheet.Length.V)
		}
	}
	return m3, ""
}
