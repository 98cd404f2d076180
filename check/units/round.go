package units

import (
	"fmt"
	"math"
)

// roundingSlack forgives the last digits of a conversion, so that 16 bar(g) is 1600 kPa
// whichever way it is rounded. It is relative above 1 and absolute below.
const roundingSlack = 1e-9

const largestExact = 1 << 53 // beyond this a float64 skips whole numbers

// RoundUp is the smallest whole number not below x. NaN, infinities and |x| > 2^53 are errors.
func RoundUp(x float64) (int64, error) { return whole(x, math.Ceil(x-slack(x))) }

// RoundDown is the largest whole number not above x, with the errors of RoundUp.
func RoundDown(x float64) (int64, error) { return whole(x, math.Floor(x+slack(x))) }

func slack(x float64) float64 { return roundingSlack * math.Max(1, math.Abs(x)) }

func whole(x, rounded float64) (int64, error) {
	if math.IsNaN(x) || math.Abs(x) > largestExact {
		return 0, fmt.Errorf("%v cannot be a whole number in the facts", x)
	}
	return int64(rounded), nil
}

// KPaUp is kPa rounded up: the safe side for a demand.
func KPaUp(p GaugePressure) (int64, error) { return RoundUp(float64(p) / 1e3) }

// KPaDown is kPa rounded down: the safe side for a rating.
func KPaDown(p GaugePressure) (int64, error) { return RoundDown(float64(p) / 1e3) }

// CentikelvinUp is hundredths of a kelvin rounded up: the safe side for the hottest case.
func CentikelvinUp(t Temperature) (int64, error) { return RoundUp(float64(t) * 100) }

// CentikelvinDown is hundredths of a kelvin rounded down: the safe side for the coldest case.
func CentikelvinDown(t Temperature) (int64, error) { return RoundDown(float64(t) * 100) }

// MillimetreUp is mm rounded up: the safe side for a length that is needed.
func MillimetreUp(l Length) (int64, error) { return RoundUp(float64(l) * 1e3) }

// MillimetreDown is mm rounded down: the safe side for a length that is at hand.
func MillimetreDown(l Length) (int64, error) { return RoundDown(float64(l) * 1e3) }

// PermilleUp is thousandths rounded up: the safe side for a fill or a loss.
func PermilleUp(f Fraction) (int64, error) { return RoundUp(float64(f) * 1e3) }

// PermilleDown is thousandths rounded down: the safe side for a margin.
func PermilleDown(f Fraction) (int64, error) { return RoundDown(float64(f) * 1e3) }
