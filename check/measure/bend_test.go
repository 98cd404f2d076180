package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

// offsets holds arcs and beam of a radius and step in mm (computed, plane geometry).
func offsets(t *testing.T, r, step units.Length, arc [3]float64, beam [2]float64) {
	a := no(measure.ArcOffset(r*mm, step*mm))
	near(t, arc[0]*mm, a.Length, 1e-3)
	near(t, arc[1]*mm, a.Span, 1e-3)
	near(t, arc[2], a.Angle*180/math.Pi, 1e-3)
	b := measure.BeamOffset(r*mm, step*mm)
	near(t, beam[0]*mm, b.Span, 1e-3)
	near(t, beam[1]*mm, b.Length, 1e-3)
	near(t, float64(r)*mm, measure.BeamRadius(b.Span, step*mm), 1e-9)
}

func TestV13_1(t *testing.T) {
	offsets(t, 150, 100, [3]float64{252.3, 223.6, 48.19}, [2]float64{300.0, 316.2})
}

func TestV13_2(t *testing.T) {
	offsets(t, 200, 150, [3]float64{358.3, 312.2, 51.32}, [2]float64{424.3, 450.0})
}

func TestV13_3(t *testing.T) { near(t, 621.2, measure.UBendLength(150, 75), 1e-4) }

// Computed: a U of 600 mm at a spacing of 300 mm bends to 150 mm, under the 175 mm allowed.
func TestV13_4(t *testing.T) {
	near(t, 150, measure.UBendRadius(300), 1e-12)
	assert.Less(t, measure.UBendRadius(300), units.Length(175))
	assert.GreaterOrEqual(t, measure.UBendRadius(350), units.Length(175))
}

func TestV13_5(t *testing.T) { near(t, 24, measure.Slack(600, -0.04), 1e-9) }

// A quarter bend is half a U; arcs reach to twice the radius and no further, and never need more hose than the beam's span.
func TestBends(t *testing.T) {
	near(t, float64(measure.UBendLength(150, 0))/2, measure.QuarterBendLength(150, 0), 1e-12)
	near(t, 150*math.Pi/2+100, measure.QuarterBendLength(150, 50), 1e-12)
	_, err := measure.ArcOffset(100, 201)
	refuses(t, err)
	near(t, 100*math.Pi, no(measure.ArcOffset(100, 200)).Length, 1e-9)
	rapid.Check(t, func(t *rapid.T) {
		r := units.Length(rapid.Float64Range(50, 500).Draw(t, "r"))
		step := r * units.Length(rapid.Float64Range(0.01, 1).Draw(t, "step"))
		arc, beam := no(measure.ArcOffset(r, step)), measure.BeamOffset(r, step)
		assert.Less(t, arc.Span, beam.Span)
		assert.GreaterOrEqual(t, beam.Span, measure.BeamOffset(r*0.9, step).Span)
		assert.True(t, math.IsInf(float64(measure.BeamRadius(1, 0)), 1))
	})
}
