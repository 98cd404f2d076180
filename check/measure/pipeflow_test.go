package measure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"lineworthy/check/measure"
	"lineworthy/check/units"
)

var acetone = measure.Flowing{Density: 790.8, Viscosity: 0.32e-3}

// Restated: Crane TP-410 example 7.6, print 781 L/min, an open library 792.5 with f 0.017 and 746.5 with the friction
// worked out. Recalled: bore 77.9 mm, entry 0.5, exit 1, elbows 30 f and a ball valve 3 f with f 0.017, roughness
// 0.0457 mm, water of 998 kg/m3 and 1.1 mPa s.
func TestV5_4(t *testing.T) {
	const fT, bore = 0.017, 77.9 * mm
	head := measure.StaticHead(998, 7)
	water := measure.Flowing{Density: 998, Viscosity: 1.1e-3}
	fittings := 0.5 + 1 + 6*30*fT + 3*fT
	rough := measure.Pipe{Bore: bore, Length: 60, Roughness: 0.0457 * mm, Losses: fittings, Friction: 1}
	fixed := measure.Pipe{Bore: bore, Length: 60, Losses: fittings + fT*60/bore}
	at := func(p measure.Pipe) float64 {
		return float64(measure.Flow(p.Area(), no(measure.PipeVelocity(p, water, head)))) / litre * 60
	}
	near(t, 781, at(fixed), 5e-2)
	near(t, 792.5, at(fixed), 5e-2)
	near(t, 746.5, at(rough), 5e-2)
}

// Computed: acetone at 1 bar through 10 m of 25 mm hose; the times are given to 0.1 min.
func TestV5_13(t *testing.T) {
	for multiplier, want := range map[float64][2]float64{1: {5.03, 6.7}, 2: {3.92, 8.7}, 4: {2.89, 11.7}} {
		p := measure.Pipe{Bore: 25 * mm, Length: 10, Roughness: 1.5e-6, Losses: 4, Friction: multiplier}
		v := no(measure.PipeVelocity(p, acetone, 1*bar))
		near(t, want[0], v, 5e-3)
		minutes := measure.TransferTime(1, measure.Flow(p.Area(), v)) / 60
		within(t, want[1], minutes, 0.05+5e-3*want[1])
	}
}

// Computed: analytic and numeric agree.
func TestV5_14(t *testing.T) {
	pipe := measure.Pipe{Bore: 25 * mm}.Area()
	near(t, 831.763, measure.DrainTime(1, pipe, 10, 790.8, 0.2*bar, 1, 0), 1e-6)
	// The sum over a thousand slices, each at its own Darcy velocity.
	sum := units.Time(0)
	for i := range 1000 {
		h := (float64(i) + 0.5) / 1000
		p := measure.Pipe{Bore: 25 * mm, Losses: 10}
		v := no(measure.PipeVelocity(p, acetone, 0.2*bar+measure.StaticHead(790.8, units.Length(h))))
		sum += measure.TransferTime(0.001, measure.Flow(pipe, v))
	}
	near(t, 831.763, sum, 1e-5)
}

// Restated: Crane TP-410 example 7.32; water at 60 °F as its tables have it, 62.364 lb/ft3 and 0.25611 psi (recalled).
func TestV5_9(t *testing.T) {
	tank := (5 * psi) + seaLevel
	h := measure.SuctionHead(tank, 0.25611*psi, 62.364*poundPerF3, 25*foot, 6*foot)
	near(t, 13.887, h/foot, 1e-4)
}

func TestPipeVelocityRefuses(t *testing.T) {
	p := measure.Pipe{Bore: 25 * mm, Length: 10, Friction: 1}
	_, err := measure.PipeVelocity(p, acetone, 1e9)
	refuses(t, err)
	assert.Zero(t, measure.PipeDrop(p, acetone, 0))
	assert.Equal(t, units.PressureDifference(2e5), measure.FlashingMargin(3e5, 1e5))
}

// The velocity found spends the pressure given, and more pressure never flows slower.
func TestPipeVelocitySolves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		dp := units.PressureDifference(rapid.Float64Range(1e3, 1e6).Draw(t, "dp"))
		k := rapid.Float64Range(0, 20).Draw(t, "k")
		p := measure.Pipe{Bore: 25 * mm, Length: 10, Losses: k, Friction: 1, Roughness: 1e-5}
		v := no(measure.PipeVelocity(p, acetone, dp))
		if re := p.Reynolds(acetone, v); re < 1900 || re > 4100 { // friction jumps between
			near(t, float64(dp), measure.PipeDrop(p, acetone, v), 1e-6)
		}
		assert.LessOrEqual(t, v, no(measure.PipeVelocity(p, acetone, dp*2)))
	})
}

func BenchmarkPipeVelocity(b *testing.B) {
	p := measure.Pipe{Bore: 25 * mm, Length: 10, Roughness: 1.5e-6, Losses: 4, Friction: 1}
	for b.Loop() {
		_, _ = measure.PipeVelocity(p, acetone, 1*bar)
	}
}
