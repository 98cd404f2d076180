package facts

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// liquids are the fluids of a run that go through it as a liquid.
func liquids(r *resolve.Run) []*resolve.Fluid {
	return slices.DeleteFunc(slices.Clone(r.Fluids), isGas)
}

// liquid is the fluid's equations for the methods of trapped liquid; false when the catalog lacks one of them.
func liquid(f *resolve.Fluid) (measure.Liquid, bool) {
	p := f.Props
	if p.Density == nil || p.Compress == nil || p.VapourP == nil {
		return measure.Liquid{}, false
	}
	return measure.Liquid{Vapour: equation(p.VapourP), Density: equation(p.Density), Compressibility: equation(p.Compress), MolarMass: molar(p)}, true
}

func molar(f *catalog.Fluid) float64 {
	if m := f.Constants.MolarMassGMol; m != nil {
		return m.Value
	}
	return 0
}

// sunC is what the sun makes of a bare closed pipe or vessel: 60 to 70 °C usually, API Std 521 5.14.4.1 c (5th ed. 2007,
// published); 65 °C bare and 60 °C insulated are the figures of ADR 4.3.3.2.2 (2017, published) for tanks.
const (
	sunBare      = units.Temperature(338.15)
	sunInsulated = units.Temperature(333.15)
)

// warmest is the highest temperature that what is shut in can reach: that of the run, and under the sun what the sun makes
// of it. A sheet that does not say where the line stands counts as exposed.
func (b *builder) warmest(r *resolve.Run, insulated bool) *units.Temperature {
	return b.sunned(b.hottest(r), insulated)
}

// warmestOf is the highest temperature that a fluid shut in by itself can reach.
func (b *builder) warmestOf(f *resolve.Fluid) *units.Temperature { return b.sunned(b.warm(f), false) }

func (b *builder) sunned(top *units.Temperature, insulated bool) *units.Temperature {
	if sun := b.l.Sheet.Site.Sun; top == nil || sun.Set && sun.V != "exposed" {
		return top
	}
	high := sunBare
	if insulated {
		high = sunInsulated
	}
	return higher(top, &high)
}

// steady is the highest pressure of ordinary operation in a list of pushes, failures left out; false when one is unknown.
func steady(pushes []push) (units.GaugePressure, bool) {
	var top units.GaugePressure
	for i := range pushes {
		p := &pushes[i]
		if failure(p) {
			continue
		}
		if !p.known {
			return 0, false
		}
		top = max(top, p.p)
	}
	return top, len(pushes) > 0
}

// items are what part p is made of, worked out once.
func (b *builder) items(p *resolve.Part) []item {
	if got, ok := b.made[p]; ok {
		return got
	}
	got := b.partItems(p, b.hottest(p.Run))
	b.made[p] = got
	return got
}

// weakest is the lowest rating among parts, and whether all are known.
func (b *builder) weakest(parts []*resolve.Part) (item, bool) {
	var low item
	found, all := false, true
	for _, p := range parts {
		for _, it := range b.items(p) {
			if it.why != "" {
				all = false
				continue
			}
			if !found || it.have < low.have {
				low, found = it, true
			}
		}
	}
	return low, found && all
}

// bore is the inner diameter of a part by its size or that of its inlet; a nominal size is taken at its face value.
func bore(p *resolve.Part) (units.Length, bool) {
	if p.Sheet.Size.Set {
		if p.Hose != nil {
			if mm, ok := sized(p.Hose.Bore, p.Sheet.Size.V); ok {
				return units.Length(mm / 1000), true
			}
		}
		return p.Sheet.Size.V.Nominal(), p.Sheet.Size.V.Nominal() > 0
	}
	if p.Inlet.Sheet != nil && p.Inlet.Sheet.Size.Set {
		n := p.Inlet.Sheet.Size.V.Nominal()
		return n, n > 0
	}
	return 0, false
}
