package measure

import (
	"math"

	"lineworthy/check/units"
)

// GaugeBand is the error band of a gauge anywhere on its scale: class in per cent of the span, EN 837-1 (published). The
// span of a gauge from -1 to 5 bar is 6 bar.
func GaugeBand(class float64, span units.PressureDifference) units.PressureDifference {
	return units.PressureDifference(class / 100 * float64(span))
}

// GaugeDrift is the temperature effect of a Bourdon tube: 0.04 % of the span per K from 20 °C, EN 837-1 (restated).
func GaugeDrift(span units.PressureDifference, t units.Temperature) units.PressureDifference {
	return units.PressureDifference(0.0004 * float64(span) * math.Abs(float64(t)-293.15))
}

// GaugeUncertainty adds band and drift, the worst case.
func GaugeUncertainty(class float64, span units.PressureDifference, t units.Temperature) units.PressureDifference {
	return GaugeBand(class, span) + GaugeDrift(span, t)
}

// GaugeUncertaintyRSS is the root of their squares: a likely, not a worst case.
func GaugeUncertaintyRSS(class float64, span units.PressureDifference, t units.Temperature) units.PressureDifference {
	return units.PressureDifference(math.Hypot(float64(GaugeBand(class, span)), float64(GaugeDrift(span, t))))
}

// ScaleUsed is where a pressure lies on the scale, 0 at its start and 1 at its end.
func ScaleUsed(p, from, to units.GaugePressure) float64 { return float64((p - from) / (to - from)) }
