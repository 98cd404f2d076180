package units

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

const tight = 1e-12

func close12(t *rapid.T, want, got, size float64) {
	if math.Abs(want-got) > tight*math.Max(size, math.Abs(want)) {
		t.Fatalf("want %v, got %v", want, got)
	}
}

// Property: a pressure typed in any unit and either basis reads back as the number typed.
func TestPressureRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom(pressureUnits).Draw(t, "unit")
		number := rapid.Float64Range(0, 1000).Draw(t, "number")
		g, unit, err := ParseGauge(fmt.Sprintf("%v %s", number, u.gauge))
		require.NoError(t, err)
		back, err := g.In(unit)
		require.NoError(t, err)
		close12(t, number, back, 0)
		a, unit, err := ParseAbsolute(fmt.Sprintf("%v %s", number, u.absolute))
		require.NoError(t, err)
		back, err = a.In(unit)
		require.NoError(t, err)
		close12(t, number, back, 0)
	})
}

// Property: gauge to absolute and back, in any ambient, changes nothing.
func TestBasisRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ambient, err := Ambient(Length(rapid.Float64Range(-500, 11000).Draw(t, "altitude")))
		require.NoError(t, err)
		g := GaugePressure(rapid.Float64Range(-2e4, 1e9).Draw(t, "gauge"))
		close12(t, float64(g), float64(g.Absolute(ambient).Gauge(ambient)), float64(ambient))
	})
}

// Property: every unit of every other quantity reads back as the number typed.
func TestTableRoundTrip(t *testing.T) {
	all := []*table{&temperatures, &temperatureDifferences, &lengths, &elevations, &areas, &volumes, &volumeFlows, &masses, &times,
		&velocities, &viscosities, &densities, &resistances, &conductivities, &forces, &energies, &powers, &fractions, &flowCoefficients, &intervals}
	rapid.Check(t, func(t *rapid.T) {
		table := rapid.SampledFrom(all).Draw(t, "table")
		s := rapid.SampledFrom(table.scales).Draw(t, "scale")
		number := rapid.Float64Range(0, 1).Draw(t, "number")
		si, _, err := table.read(fmt.Sprintf("%v %s", number, s.name))
		require.NoError(t, err)
		back, err := table.in(si, s.name)
		require.NoError(t, err)
		close12(t, number, back, math.Abs(s.zero)+1)
		_, err = table.in(si, "cubit")
		require.Error(t, err)
	})
}

// Property: each spelling of a table finds its own unit, and no other.
func TestSpellingsAreDistinct(t *testing.T) {
	for _, table := range []*table{&temperatures, &lengths, &areas, &volumes, &volumeFlows, &masses, &times, &velocities, &viscosities,
		&densities, &resistances, &conductivities, &forces, &energies, &powers, &fractions, &intervals} {
		for _, s := range table.scales {
			for _, spelling := range append([]string{string(s.name)}, s.spellings...) {
				found, err := table.find(spelling)
				require.NoError(t, err)
				assert.Equal(t, s.name, found.name, spelling)
			}
		}
		for hinted := range table.hints {
			assert.Equal(t, plain(hinted), hinted)
			_, err := table.find(hinted)
			assert.Error(t, err, hinted)
		}
	}
}

// Property: rounding brackets the value and the two sides are at most one apart.
func TestRoundingBrackets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-1e7, 1e7).Draw(t, "x")
		up, err := RoundUp(x)
		require.NoError(t, err)
		down, err := RoundDown(x)
		require.NoError(t, err)
		slack := 1e-9 * math.Max(1, math.Abs(x))
		if float64(up) < x-slack || float64(down) > x+slack || up-down > 1 || up < down {
			t.Fatalf("%v is not within %d..%d", x, down, up)
		}
	})
}

// The typed methods reach the right table.
func TestInUsesItsOwnTable(t *testing.T) {
	for _, c := range []struct {
		want float64
		in   func(Unit) (float64, error)
		unit Unit
	}{
		{68, Celsius(20).In, "°F"}, {9, TemperatureDifference(5).In, "°F"}, {2, Length(0.0508).In, "in"}, {50, Area(50e-6).In, "mm2"},
		{1000, Volume(1).In, "L"}, {60, VolumeFlow(1e-3).In, "L/min"}, {1, Mass(0.45359237).In, "lb"}, {2, Time(120).In, "min"},
		{3.6, Velocity(1).In, "km/h"}, {1, Viscosity(1e-3).In, "cP"}, {0.805, Density(805).In, "g/cm3"}, {1, Resistance(1e6).In, "Mohm"},
		{50, Conductivity(50e-12).In, "pS/m"}, {1, Force(9.80665).In, "kgf"}, {2, Energy(2e-3).In, "mJ"}, {2, Power(2e6).In, "MW"}, {85, Fraction(0.85).In, "%"},
	} {
		got, err := c.in(c.unit)
		require.NoError(t, err)
		assert.InEpsilon(t, c.want, got, 1e-9, c.unit)
	}
}
