package measure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// The root of 2 by either slope, and the nearer end where there is none.
func TestBisect(t *testing.T) {
	f := func(x float64) float64 { return x*x - 2 }
	assert.InDelta(t, math.Sqrt2, bisect(0, 2, f), 1e-15)
	assert.InDelta(t, math.Sqrt2, bisect(0, 2, func(x float64) float64 { return -f(x) }), 1e-15)
	assert.Equal(t, 2.0, bisect(2, 3, f))
	assert.Equal(t, 1.0, bisect(0, 1, f))
	assert.NoError(t, outside("x", "m", 1, 1, 1))
	assert.Error(t, outside("x", "m", math.NaN(), 0, 1))
}

// The same roots by false position, with a few evaluations; along a steep curve as well.
func TestRoot(t *testing.T) {
	asked := 0
	count := func(f func(float64) float64) func(float64) float64 {
		return func(x float64) float64 { asked++; return f(x) }
	}
	f := func(x float64) float64 { return x*x - 2 }
	assert.InDelta(t, math.Sqrt2, root(0, 2, count(f)), 1e-15)
	assert.InDelta(t, math.Sqrt2, root(0, 2, count(func(x float64) float64 { return -f(x) })), 1e-15)
	assert.Less(t, asked, 2*20)
	asked = 0
	assert.InDelta(t, math.Log(2), root(-12, 3, count(func(x float64) float64 { return math.Exp(x) - 2 })), 1e-15)
	assert.Less(t, asked, 40)
	assert.Equal(t, 2.0, root(2, 3, f))
	assert.Equal(t, 1.0, root(0, 1, f))
	assert.Equal(t, 2.0, root(2, 2, f))
}

// By hand: two roots, one, none, a straight line, a level one, a touch at zero.
func TestRoots(t *testing.T) {
	for _, w := range []struct{ a, b, c float64 }{{1, -3, 2}, {1, 3, 2}, {0, 2, -4}} {
		for _, r := range roots(w.a, w.b, w.c) {
			assert.InDelta(t, 0, w.a*r*r+w.b*r+w.c, 1e-12)
		}
	}
	assert.Equal(t, []float64{1, 2}, roots(1, -3, 2))
	assert.Equal(t, []float64{2}, roots(0, 2, -4))
	assert.Empty(t, roots(1, 0, 1))
	assert.Empty(t, roots(0, 0, 1))
	assert.Equal(t, []float64{0}, roots(1, 0, 0))
}
