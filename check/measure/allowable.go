package measure

import "lineworthy/check/units"

// Rated is an item with the tables that its rating is the product of, all of one temperature. Only factors that a standard
// calls independent may be multiplied; a factor that is missing is unknown, not 1.
type Rated struct {
	ID     string
	Table  Curve     // gauge pascals
	By     []Curve   // factors that depend on temperature
	Factor []float64 // constant factors: dynamic load, bend, fitting
}

// Allowable is what the item holds at t. Beyond any of its tables the error is an OutsideError.
func (r Rated) Allowable(t units.Temperature) (units.GaugePressure, error) {
	v, err := r.Table.At(t)
	for _, c := range r.By {
		if err != nil {
			return 0, err
		}
		var f float64
		f, err = c.At(t)
		v *= f
	}
	for _, f := range r.Factor {
		v *= f
	}
	return units.GaugePressure(v), err
}

// WeakestAt is the item with the least margin at t, against the demand there. The first error stops it: an assembly with
// one unknown item is unknown. Without items the ID is empty.
func WeakestAt(items []Rated, demand Curve, t units.Temperature) (Held, error) {
	need, err := demand.At(t)
	if err != nil {
		return Held{}, err
	}
	var held []Held
	for _, it := range items {
		have, err := it.Allowable(t)
		if err != nil {
			return Held{}, err
		}
		held = append(held, Held{it.ID, have, units.GaugePressure(need)})
	}
	if i := Weakest(held); i >= 0 {
		return held[i], nil
	}
	return Held{}, nil
}
