package measure

import "lineworthy/check/units"

// Container is how a pipe or hose gives way: nothing at all for the zero value, the safe side for a hose whose volumetric
// expansion was not measured (ISO 6801, recalled).
type Container struct {
	Expansion  float64 // cubic, 1/K
	Compliance float64 // (1/V) dV/dp, 1/Pa
}

// Wall is a metal pipe wall.
type Wall struct {
	Bore, Thickness units.Length
	YoungPa         float64
	Poisson         float64
	LinearExpansion float64 // 1/K
}

// Closed is the pipe closed at both ends, free to grow in length: d/(2 E s) (2.5 - 2 mu), the pipe term of API 521
// equation (3) (published; re-derived for a thin wall).
func (w Wall) Closed() Container {
	return Container{3 * w.LinearExpansion, float64(w.Bore/w.Thickness) / (2 * w.YoungPa) * (2.5 - 2*w.Poisson)}
}

// FreeEnds is the pipe without axial load: d/(E s), used for water hammer.
func (w Wall) FreeEnds() Container {
	return Container{3 * w.LinearExpansion, float64(w.Bore/w.Thickness) / w.YoungPa}
}
