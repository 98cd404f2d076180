package measure_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/measure"
	"lineworthy/check/units"
)

const (
	bar        = 1e5
	psi        = 6894.757293168
	foot       = 0.3048
	inch       = 0.0254
	seaLevel   = units.StandardAtmosphere
	mm         = 1e-3
	litre      = 1e-3
	mm2        = 1e-6
	gallon     = 231 * inch * inch * inch
	poundPerF3 = 0.45359237 / (foot * foot * foot)
)

var c = units.Celsius

func fahrenheit(f float64) units.Temperature { return units.Temperature((f + 459.67) / 1.8) }

func equation(e *catalog.Equation) measure.Equation {
	if e == nil {
		return measure.Equation{}
	}
	return measure.Equation{Name: e.Equation, C: e.C, From: units.Temperature(e.FromK), To: units.Temperature(e.ToK)}
}

// fluid reads a fluid of the catalog by id, CAS number or other name.
func fluid(t testing.TB, name string) *catalog.Fluid {
	t.Helper()
	f, err := catalog.Open().Fluid(name)
	require.NoError(t, err)
	return f
}

func liquid(t testing.TB, name string) measure.Liquid {
	f := fluid(t, name)
	l := measure.Liquid{Vapour: equation(f.VapourP), Density: equation(f.Density), Compressibility: equation(f.Compress)}
	if m := f.Constants.MolarMassGMol; m != nil {
		l.MolarMass = m.Value
	}
	return l
}

// near holds got within a part of want.
func near[T ~float64](t tester, want float64, got T, part float64) {
	t.Helper()
	assert.InEpsilon(t, want, float64(got), part)
}

// within holds got within an absolute distance of want.
func within[T ~float64](t tester, want float64, got T, distance float64) {
	t.Helper()
	assert.InDelta(t, want, float64(got), distance)
}

// prints holds got to what a source with so many decimals would print.
func prints[T ~float64](t tester, want float64, got T, decimals int) {
	t.Helper()
	scale := math.Pow(10, float64(decimals))
	assert.Equal(t, want, math.Round(float64(got)*scale)/scale)
}

// no fails on an error and returns the value.
func no[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// refuses holds an error to be missing knowledge.
func refuses(t tester, err error) {
	t.Helper()
	var out *measure.OutsideError
	assert.ErrorAs(t, err, &out)
}

// tester is what tests and property tests share.
type tester interface {
	Helper()
	Errorf(format string, args ...any)
}
