package measure

import "math"

// halvings is a fixed count, so that the same question gives the same bytes on every machine; 80 exhaust a float64.
const halvings = 80

// bisect finds where f turns from negative to positive (or back) between low and high. Where f has one sign throughout,
// it returns the end that is nearer to zero.
func bisect(low, high float64, f func(float64) float64) float64 {
	at := f(low)
	if end := f(high); (at < 0) == (end < 0) {
		if math.Abs(end) < math.Abs(at) {
			return high
		}
		return low
	}
	for range halvings {
		mid := low + (high-low)/2
		if mid == low || mid == high {
			break // nothing lies between: every further halving would end here as well
		}
		if (f(mid) < 0) == (at < 0) {
			low = mid
		} else {
			high = mid
		}
	}
	return low + (high-low)/2
}

// falseSteps bring a smooth curve to within some last digits of its root, a steep vapour pressure over its whole range too.
const falseSteps = 20

// root is bisect for a curve that is smooth and crosses zero once. Steps of false position come first, which count an end
// that stays only half (the Illinois rule), and leave a third of the evaluations.
func root(low, high float64, f func(float64) float64) float64 {
	at, end := f(low), f(high)
	for stayed, step := 0, 0; step < falseSteps; step++ {
		mid := low + (high-low)*at/(at-end)
		if !(mid > low && mid < high) {
			break // no crossing, or as near as the digits go
		}
		if v := f(mid); (v < 0) == (at < 0) {
			low, at, stayed = mid, v, max(stayed, 0)+1
		} else {
			high, end, stayed = mid, v, min(stayed, 0)-1
		}
		switch {
		case stayed > 1:
			end /= 2
		case stayed < -1:
			at /= 2
		}
	}
	return bisect(low, high, f)
}

// outside is the error of a value beyond its range, nil within. What is not a number is outside.
func outside(what, unit string, at, from, to float64) error {
	if at >= from && at <= to {
		return nil
	}
	return &OutsideError{what, unit, at, from, to}
}
