package facts

import (
	"fmt"
	"math"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// permille rounds to the nearest per mille: a concentration has no safe side.
func permille(f units.Fraction) (int64, error) {
	return int64(math.Round(float64(f) * 1000)), nil
}

// strengthFits says whether the stated concentration lies in the range the catalog row speaks for. A fluid that is
// listed as supplied pure may leave it out.
func strengthFits(f *resolve.Fluid) Bool {
	r := f.Cat.Strength
	switch {
	case r == nil && f.Strength == nil:
		return Yes(true)
	case r == nil:
		return Yes(*f.Strength > 0.995)
	case f.Strength == nil && r.To >= 99.95:
		return Yes(true)
	case f.Strength == nil:
		return Bool{}
	}
	return Yes(inRange(r, *f.Strength))
}

// inRange compares in per cent with a hair of room, so that "96 %" is inside 96 to 100.
func inRange(r *catalog.Range, f units.Fraction) bool {
	pct := float64(f) * 100
	return pct >= r.From-1e-9 && pct <= r.To+1e-9
}

// accumulator says whether the liquid holds charge: below 50 pS/m (methods of IEC TS 60079-32-1, recalled). A gas does
// not. The limit only sorts the fluid into a class; what follows from it is for the rules.
func (b *builder) accumulator(f *resolve.Fluid) Bool {
	if isGas(f) {
		return Yes(false)
	}
	if f.Sheet != nil && f.Sheet.Conductivity.Set {
		return Yes(float64(f.Sheet.Conductivity.V)*1e12 < 50)
	}
	if n := f.Cat.Electrical.ConductivityPS; n != nil {
		return Yes(n.Value < 50)
	}
	if t := f.Cat.Electrical.Class; t != nil {
		return Yes(t.Value == "low")
	}
	return Bool{}
}

// isGas says whether the fluid runs through the line as a gas.
func isGas(f *resolve.Fluid) bool {
	switch f.Cat.Form {
	case "compressed-gas", "dissolved-gas", "vapour":
		return true
	}
	return false
}

// listedFor says which concentration the catalog row speaks for.
func listedFor(f *resolve.Fluid) string {
	r := f.Cat.Strength
	if r == nil {
		return f.Cat.Name + " is listed pure"
	}
	return fmt.Sprintf("%s is listed for %g to %g %%", f.Cat.Name, r.From, r.To)
}
