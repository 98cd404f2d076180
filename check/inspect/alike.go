package inspect

import (
	"math"
	"strings"

	"lineworthy/check/units"
)

// ofPlate is how far two pressures may lie apart that plates in different units state alike (practice, no source).
const ofPlate = 0.005

// alike compares what was read with what the sheet says: words whatever their case, pressures whatever their unit.
func alike[T any](a, b T) bool {
	switch x := any(a).(type) {
	case string:
		return strings.EqualFold(x, any(b).(string))
	case units.Pressure:
		p, q := gauge(x), gauge(any(b).(units.Pressure))
		return math.Abs(p-q) <= ofPlate*math.Abs(q)
	case units.Date:
		y := any(b).(units.Date)
		return x.Days == y.Days || (x.MonthOnly || y.MonthOnly) && x.String()[:len("2026-11")] == y.String()[:len("2026-11")]
	}
	return any(a) == any(b)
}

// gauge is a pressure in Pa above the air at sea level.
func gauge(p units.Pressure) float64 { return float64(p.Gauge(units.StandardAtmosphere)) }
