package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
)

// Restated: an open library's documented values (recalled to all their digits).
func TestV5_1(t *testing.T) {
	colebrook, churchill := no(measure.Colebrook(1e5, 1e-4)), measure.Churchill(1e5, 1e-4)
	near(t, 0.018513866077471648, colebrook, 1e-8)
	near(t, 0.018462624566280075, churchill, 1e-8)
	prints(t, 0.018513866, colebrook, 9)
	prints(t, 0.018462625, churchill, 9)
}

func TestV5_2(t *testing.T) {
	near(t, 0.5, measure.LaminarFriction(128), 1e-12)
	near(t, 0.5, measure.Friction(128, 0.01), 1e-12)
}

// Restated: Crane TP-410 example 7.1, smooth pipe, which prints 0.0179.
func TestV5_3(t *testing.T) {
	f := no(measure.Colebrook(100600, 0))
	near(t, 0.0179, f, 5e-3)
	prints(t, 0.017967, f, 6)
}

func TestColebrookRefuses(t *testing.T) {
	for _, w := range [][2]float64{{3999, 0}, {1.1e8, 0}, {1e5, 0.051}, {1e5, -0.001}} {
		_, err := measure.Colebrook(w[0], w[1])
		refuses(t, err)
	}
}

// The working bound of corrugated hose: 0.072 at a height of 0.05 of the bore and 0.113 at 0.12 (computed).
func TestCorrugatedFriction(t *testing.T) {
	for height, want := range map[float64]float64{0.05: 0.072, 0.12: 0.113} {
		low, high := measure.CorrugatedFriction(1e6, height)
		near(t, want, high, 1e-2)
		assert.Greater(t, high, 3*low)
	}
}

func TestFrictionRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		re := rapid.Float64Range(4001, 1e8).Draw(t, "re")
		eps := rapid.Float64Range(0, 0.04).Draw(t, "eps")
		f := measure.Friction(re, eps)
		assert.LessOrEqual(t, f, measure.Friction(re, eps*1.1+1e-6))
		// Churchill 1977 claims to follow Colebrook within a few per cent.
		assert.InEpsilon(t, f, measure.Churchill(re, eps), 0.05)
	})
	assert.Greater(t, measure.Friction(3000, 0.06), 0.0)
}

func BenchmarkColebrook(b *testing.B) {
	for b.Loop() {
		_, _ = measure.Colebrook(1e5, 1e-4)
	}
}
