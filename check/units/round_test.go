package units

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestKPaFacts(t *testing.T) {
	for _, c := range []struct {
		typed    string
		down, up int64
	}{
		{"16 bar(g)", 1600, 1600}, {"350 psig", 2413, 2414}, {"0 bar(g)", 0, 0}, {"0.1 bar(g)", 10, 10}, {"-0.5 bar(g)", -50, -50},
		{"1.0001 kPa(g)", 1, 2}, {"-1.5 kPa(g)", -2, -1}, {"1.1 MPa(g)", 1100, 1100}, {"0.29 bar(g)", 29, 29}, {"100 kgf/cm2(g)", 9806, 9807},
	} {
		g, _, err := ParseGauge(c.typed)
		require.NoError(t, err)
		down, err := KPaDown(g)
		require.NoError(t, err)
		up, err := KPaUp(g)
		require.NoError(t, err)
		assert.Equal(t, [2]int64{c.down, c.up}, [2]int64{down, up}, c.typed)
	}
}

func TestOtherFacts(t *testing.T) {
	get := func(v int64, err error) int64 { require.NoError(t, err); return v }
	f131, _, err := ParseTemperature("131 °F")
	require.NoError(t, err)
	assert.Equal(t, int64(32815), get(CentikelvinUp(f131)))
	assert.Equal(t, int64(32815), get(CentikelvinDown(f131)))
	assert.Equal(t, int64(29316), get(CentikelvinUp(Celsius(20.001))))
	assert.Equal(t, int64(29315), get(CentikelvinDown(Celsius(20.001))))
	assert.Equal(t, int64(39), get(MillimetreUp(0.0381)))
	assert.Equal(t, int64(38), get(MillimetreDown(0.0381)))
	assert.Equal(t, int64(3000), get(MillimetreUp(3)))
	assert.Equal(t, int64(850), get(PermilleUp(0.85)))
	assert.Equal(t, int64(850), get(PermilleDown(0.85)))
	assert.Equal(t, int64(334), get(PermilleUp(1.0/3)))
	assert.Equal(t, int64(333), get(PermilleDown(1.0/3)))
}

func TestFactsRefuseWhatIsNoNumber(t *testing.T) {
	for _, x := range []float64{nan(), inf(), -inf(), 1e16} {
		_, err := RoundUp(x)
		assert.ErrorContains(t, err, "cannot be a whole number in the facts")
		_, err = RoundDown(x)
		assert.ErrorContains(t, err, "cannot be a whole number in the facts")
	}
	for _, err := range []error{
		second(KPaUp(GaugePressure(nan()))), second(KPaDown(GaugePressure(nan()))), second(CentikelvinUp(Temperature(inf()))),
		second(CentikelvinDown(Temperature(inf()))), second(MillimetreUp(Length(inf()))), second(MillimetreDown(Length(inf()))),
		second(PermilleUp(Fraction(nan()))), second(PermilleDown(Fraction(nan()))),
	} {
		assert.Error(t, err)
	}
}

func second(_ int64, err error) error { return err }
