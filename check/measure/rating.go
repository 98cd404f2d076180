package measure

import (
	"errors"
	"fmt"

	"gonum.org/v1/gonum/interp"

	"lineworthy/check/units"
)

// Curve is a rating or factor against temperature, ascending.
type Curve struct {
	T []units.Temperature
	Y []float64 // gauge pascals, or a factor
	// Steps tables say "up to T": between two rows the hotter row counts.
	Steps bool
	// FlatFrom is the temperature down to which the first row still holds; zero when nothing is said below it.
	FlatFrom units.Temperature
}

// At reads the curve at t. Between rows it is linear, or the next hotter row for a table of steps. Beyond the last row
// there is no rating, nor below the first unless the standard says it is flat to there: the error is an OutsideError.
func (c Curve) At(t units.Temperature) (float64, error) {
	if err := c.check(); err != nil {
		return 0, err
	}
	n := len(c.T)
	if t >= c.FlatFrom && c.FlatFrom > 0 && t <= c.T[0] {
		return c.Y[0], nil
	}
	if !(t >= c.T[0] && t <= c.T[n-1]) { // not a number is outside too
		return 0, c.outside(t)
	}
	if c.Steps || n == 1 {
		return c.Y[c.row(t)], nil
	}
	return c.linear(t)
}

func (c Curve) check() error {
	if len(c.T) == 0 || len(c.T) != len(c.Y) {
		return errors.New("the rating table is empty")
	}
	for i := 1; i < len(c.T); i++ {
		if !(c.T[i] > c.T[i-1]) {
			return fmt.Errorf("the rating table does not rise in temperature: %v after %v", c.T[i], c.T[i-1])
		}
	}
	return nil
}

func (c Curve) outside(t units.Temperature) error {
	from := c.T[0]
	if c.FlatFrom > 0 {
		from = c.FlatFrom
	}
	return &OutsideError{"the rating", "°C", t.Celsius(), from.Celsius(), c.T[len(c.T)-1].Celsius()}
}

// row is the first row at or above t.
func (c Curve) row(t units.Temperature) int {
	for i := range c.T {
		if c.T[i] >= t {
			return i
		}
	}
	return len(c.T) - 1
}

func (c Curve) linear(t units.Temperature) (float64, error) {
	xs := make([]float64, len(c.T))
	for i := range xs {
		xs[i] = float64(c.T[i])
	}
	var line interp.PiecewiseLinear
	if err := line.Fit(xs, c.Y); err != nil {
		return 0, err
	}
	return line.Predict(float64(t)), nil
}
