package measure

import "lineworthy/check/units"

// BoilingPoint is the temperature at which the vapour pressure equals p. A p that the equation does not reach within its
// range is an OutsideError; an equation that is not known is an error too.
func BoilingPoint(e Equation, p units.AbsolutePressure) (units.Temperature, error) {
	low, err := VapourPressure(e, e.From)
	if err != nil {
		return 0, err
	}
	high, err := VapourPressure(e, e.To)
	if err != nil {
		return 0, err
	}
	if err := outside("the boiling point", "Pa", float64(p), float64(low), float64(high)); err != nil {
		return 0, err
	}
	t := root(float64(e.From), float64(e.To), func(k float64) float64 {
		v, _ := VapourPressure(e, units.Temperature(k))
		return float64(v - p)
	})
	return units.Temperature(t), nil
}
