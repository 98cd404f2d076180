package facts

import (
	"lineworthy/check/measure"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// withHead adds the liquid standing above the lowest point of the run to every steady push, by the heaviest fluid.
func (b *builder) withHead(r *resolve.Run, pushes []push) []push {
	var rho units.Density
	for _, f := range r.Fluids {
		if isGas(f) {
			continue
		}
		d, why := b.density(f)
		if why != "" {
			return unknownAll(pushes, why, "a published density of "+f.Cat.Name)
		}
		rho = max(rho, d)
	}
	if rho == 0 {
		return pushes
	}
	head := r.Sheet.Source.Head
	if !head.Set {
		return unknownAll(pushes, "the sheet does not say how high the liquid stands above the line", "runs."+r.Key+".source.head")
	}
	extra := measure.StaticHead(rho, max(head.V, 0))
	for i := range pushes {
		pushes[i].p = pushes[i].p.Plus(extra)
		if head.V > 0 {
			pushes[i].cause += ", with " + head.Text + " of liquid above"
		}
	}
	return pushes
}

func unknownAll(pushes []push, why, ask string) []push {
	for i := range pushes {
		if pushes[i].known {
			pushes[i].known, pushes[i].why, pushes[i].ask = false, why, ask
		}
	}
	return pushes
}

// density is the density of the liquid at its coldest, where it is heaviest; or why it is not known.
func (b *builder) density(f *resolve.Fluid) (units.Density, string) {
	e, m := f.Props.Density, f.Props.Constants.MolarMassGMol
	if e == nil {
		return b.solutionDensity(f)
	}
	if f.Lowest == nil {
		return 0, "how cold " + f.Cat.Name + " can get is not stated"
	}
	molar := 0.0
	if m != nil {
		molar = m.Value
	}
	t := max(*f.Lowest, units.Temperature(e.FromK)) // below its range the liquid is frozen or near it
	if e.Equation == "point" {
		t = units.Temperature(e.FromK) // one figure only, good to some per cent: enough for a column of liquid
	}
	rho, err := measure.LiquidDensity(equation(e), molar, t)
	if err != nil {
		return 0, err.Error()
	}
	if rho <= 0 {
		return 0, "the catalog lacks the molar mass that the density of " + f.Cat.Name + " needs"
	}
	return rho, ""
}

// heaviestSolution bounds the density of a solution or oil the catalog holds no curve for: concentrated sulfuric acid,
// 1840 kg/m3 at 20 °C, is the heaviest common one (handbook value, recalled).
const heaviestSolution units.Density = 1900

func (b *builder) solutionDensity(f *resolve.Fluid) (units.Density, string) {
	if f.Cat.Form != "liquid" {
		return 0, "the catalog has no density of " + f.Cat.Name
	}
	return heaviestSolution, ""
}
