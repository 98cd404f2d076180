package measure

import (
	"cmp"
	"math"
	"slices"
)

// Flip is one uncertain input and where the answer changes when it alone moves.
type Flip struct {
	Name        string
	Nominal     float64
	At          float64
	Found       bool    // false: no change within the range
	Uncertainty float64 // of the input, in its unit; zero when not stated
}

// Relative is the distance in parts of the nominal value.
func (f Flip) Relative() float64 { return (f.At - f.Nominal) / f.Nominal }

// Z is the distance in stated uncertainties; infinite when there is none, or no change in the range.
func (f Flip) Z() float64 {
	if !f.Found || f.Uncertainty <= 0 {
		return math.Inf(1)
	}
	return (f.At - f.Nominal) / f.Uncertainty
}

// Nearest are the n flips with the smallest |Z|, in the order given where equal.
func Nearest(flips []Flip, n int) []Flip {
	sorted := slices.Clone(flips)
	slices.SortStableFunc(sorted, func(a, b Flip) int { return cmp.Compare(math.Abs(a.Z()), math.Abs(b.Z())) })
	return sorted[:min(n, len(sorted))]
}

// flipCells is how finely FlipSearch looks: two changes within a cell escape it.
const flipCells = 256

// FlipSearch finds the change nearest to nominal within from..to of a margin that is no more than continuous, by
// fixed-count bisection in the first cell on either side that shows one.
func FlipSearch(nominal, from, to float64, margin func(float64) float64) (at float64, ok bool) {
	breaks := make([]float64, 0, flipCells+2)
	for i := range flipCells + 1 {
		breaks = append(breaks, from+(to-from)*float64(i)/flipCells)
	}
	return flip(nominal, breaks, margin, bisect)
}

// FlipLinear is FlipSearch for a margin of straight pieces between the breaks, ascending: exact.
func FlipLinear(nominal float64, breaks []float64, margin func(float64) float64) (at float64, ok bool) {
	return flip(nominal, breaks, margin, func(a, b float64, f func(float64) float64) float64 {
		fa, fb := f(a), f(b)
		return a + (b-a)*fa/(fa-fb)
	})
}

func flip(nominal float64, breaks []float64, margin func(float64) float64, solve func(a, b float64, f func(float64) float64) float64) (at float64, ok bool) {
	xs := slices.Clone(breaks)
	if i, found := slices.BinarySearch(xs, nominal); !found && i > 0 && i < len(xs) {
		xs = slices.Insert(xs, i, nominal)
	}
	for i := 0; i+1 < len(xs); i++ {
		if (margin(xs[i]) < 0) == (margin(xs[i+1]) < 0) {
			continue
		}
		if x := solve(xs[i], xs[i+1], margin); !ok || math.Abs(x-nominal) < math.Abs(at-nominal) {
			at, ok = x, true
		}
	}
	return at, ok
}

// MarginSpread is the standard deviation of a margin to first order, from slopes and standard uncertainties pairwise. A
// screen only: a margin that is the least of several has kinks.
func MarginSpread(slopes, uncertainties []float64) float64 {
	sum := 0.0
	for i, s := range slopes {
		sum += math.Pow(s*uncertainties[i], 2)
	}
	return math.Sqrt(sum)
}
