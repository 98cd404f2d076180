package facts

import (
	"math"

	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

func (b *builder) flows() {
	b.f.Flows = []Flow{}
	for _, r := range b.l.Runs {
		if !gasOnly(r) {
			b.f.Flows = append(b.f.Flows, b.flow(r))
		}
	}
}

func (b *builder) flow(r *resolve.Run) Flow {
	f := Flow{ID: r.Key, Stated: r.Sheet.Flow.Set, Accumulator: Yes(false)}
	for _, x := range liquids(r) {
		f.Flammable = f.Flammable || resolve.Yes(x.Cat.Hazards.Flammable)
		f.Accumulator = worse(f.Accumulator, b.accumulator(x))
	}
	f.OpenTop = r.TargetEnd.Sheet != nil && (r.TargetEnd.Sheet.Open.V || r.TargetEnd.Sheet.Entry.V == "splash")
	b.blowThrough(r, &f)
	if !f.Stated {
		return f
	}
	b.velocity(r, &f)
	b.residence(r, &f)
	b.drop(r, &f)
	b.gasNeeded(r, &f)
	if q := r.Sheet.Quantity; q.Set && r.Sheet.Flow.V > 0 {
		f.Minutes = b.keep(units.RoundUp(float64(measure.TransferTime(q.V, r.Sheet.Flow.V)) / 60))
	}
	return f
}

// velocity is that in the narrowest part; velocity times bore is largest there too.
func (b *builder) velocity(r *resolve.Run, f *Flow) {
	small := units.Length(0)
	for _, p := range r.Parts {
		if p.Branch {
			continue
		}
		d, ok := bore(p)
		if !ok {
			b.unknown(r.Key, "flows.velocity_mmps", "the size of "+p.ID+" is not stated", "size of "+p.ID)
			b.unknown(r.Key, "flows.velocity_bore_mm2ps", "the size of "+p.ID+" is not stated", "size of "+p.ID)
			return
		}
		if small == 0 || d < small {
			small, f.Part = d, p.ID
		}
	}
	v := float64(measure.BoreVelocity(small, r.Sheet.Flow.V))
	f.VelocityMMPS = b.keep(units.RoundUp(v * 1e3))
	f.ProductMM2PS = b.keep(units.RoundUp(v * float64(small) * 1e6))
}

// residence is the time from the last fine filter to the end of the run, by the hoses and pipes between.
func (b *builder) residence(r *resolve.Run, f *Flow) {
	volume := 0.0
	for _, p := range r.Parts {
		if p.Sheet.Kind.V == "strainer" && p.Sheet.Fine.V {
			f.FineFilter, volume = true, 0
		}
		if d, ok := bore(p); ok && p.Sheet.Length.Set {
			volume += math.Pi / 4 * float64(d) * float64(d) * float64(p.Sheet.Length.V)
		}
	}
	if f.FineFilter {
		f.ResidenceMS = b.keep(units.RoundDown(volume / float64(r.Sheet.Flow.V) * 1e3))
	}
}

// Loss coefficients per part: entry 0.5 and exit 1 (Crane TP-410, restated), one velocity head for any other part in the
// line (practice). A corrugated hose has up to four times the friction of a smooth one (practice).
const (
	entryAndExit = 1.5
	eachPart     = 1.0
	smoothM      = 1.5e-6
	corrugated   = 4.0
)

// drop is the pressure the planned flow takes, what there is to drive it, and how far the end of the run stays above the
// vapour pressure. It is a planning figure: where a property is missing there is none.
func (b *builder) drop(r *resolve.Run, f *Flow) {
	x := product(r)
	if x == nil || x.Props.Viscosity == nil || x.Lowest == nil {
		return
	}
	mu, err := measure.LiquidViscosity(equation(x.Props.Viscosity), *x.Lowest)
	rho, why := b.density(x)
	if err != nil || why != "" {
		return
	}
	total := units.PressureDifference(0)
	for _, p := range r.Parts {
		d, ok := bore(p)
		if !ok {
			return
		}
		total += measure.PipeDrop(pipe(p, d), measure.Flowing{Density: rho, Viscosity: mu}, measure.BoreVelocity(d, r.Sheet.Flow.V))
	}
	f.DropKPa = b.keep(units.RoundUp(float64(total) / 1e3))
	b.drive(r, x, total, f)
}

func pipe(p *resolve.Part, d units.Length) measure.Pipe {
	out := measure.Pipe{Bore: d, Roughness: smoothM, Friction: 1, Losses: eachPart}
	if p.Branch {
		out.Losses = 0
	}
	if p.Index == 0 {
		out.Losses += entryAndExit
	}
	if k := p.Sheet.Kind.V; k == "hose" || k == "pipe" {
		out.Length = p.Sheet.Length.V
	}
	if p.Hose != nil && p.Hose.Standard == "ISO 10380" {
		out.Friction = corrugated
	}
	return out
}

func (b *builder) drive(r *resolve.Run, x *resolve.Fluid, drop units.PressureDifference, f *Flow) {
	start, ok := b.driving(r)
	if !ok {
		return
	}
	f.DriveKPa = b.keep(units.RoundDown(float64(start) / 1e3))
	if x.Props.VapourP == nil || x.Hottest == nil {
		return
	}
	pv, err := measure.VapourPressure(equation(x.Props.VapourP), *x.Hottest)
	if err != nil {
		return
	}
	low := min(start.Plus(-drop), start).Absolute(b.l.Ambient)
	if r.Target != nil && r.Target.Sheet.Vent.V == "open" {
		low = b.l.Ambient
	}
	f.FlashKPa = b.keep(units.RoundDown(float64(measure.FlashingMargin(low, pv)) / 1e3))
}

// driving is the pressure that moves the liquid: at duty, or of the pump, into a destination open to the air.
func (b *builder) driving(r *resolve.Run) (units.GaugePressure, bool) {
	if r.Target == nil || r.Target.Sheet.Vent.V != "open" {
		return 0, false
	}
	pushes := b.passage(r).end
	if p, ok := named(pushes, "pump-shut-in"); ok {
		return p, true
	}
	return named(pushes, "duty")
}
