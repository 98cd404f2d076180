package catalog_test

import (
	"math"
	"slices"
	"strings"
	"testing"
)

// rounding is allowed on top of each fluid's own deviation: the figures of fluid_verdicts.csv have three digits, and
// boiling temperatures of the fixtures two.
const rounding = 0.2

// point is one comparison: the catalog against the middle of the other sources, and against the farthest of them.
type point struct {
	celsius, ours     float64
	middle, farthest  float64 // deviation of the catalog, per cent
	farthestSource    string
	values            []float64
	onlyCOSTALD, used bool
}

// comparisons are the points of one property by fluid, inside the range the catalog claims.
func comparisons(t *testing.T, what string) (by map[string][]*point, outside int) {
	t.Helper()
	by = map[string][]*point{}
	for _, row := range published(t, "fluid_checks.csv") {
		if row["property"] != what {
			continue
		}
		celsius, _ := figure(t, row["t_c"])
		theirs, _ := figure(t, row["value"])
		ours, ok := property(t, row["fluid"], what, celsius)
		if !ok {
			outside++
			continue
		}
		p := pointAt(by, row["fluid"], celsius, ours)
		p.add(theirs, row["source"])
	}
	for _, points := range by {
		for _, p := range points {
			p.middle = deviation(p.ours, median(p.values))
		}
	}
	return by, outside
}

func pointAt(by map[string][]*point, fluid string, celsius, ours float64) *point {
	i := slices.IndexFunc(by[fluid], func(p *point) bool { return p.celsius == celsius })
	if i < 0 {
		by[fluid] = append(by[fluid], &point{celsius: celsius, ours: ours})
		i = len(by[fluid]) - 1
	}
	return by[fluid][i]
}

// add takes one source in. COSTALD judges a density only where nothing else does: it is poor for water, glycols and
// light gases.
func (p *point) add(theirs float64, source string) {
	costald := strings.HasPrefix(source, "COSTALD")
	if costald && p.used && !p.onlyCOSTALD {
		return
	}
	if p.used && p.onlyCOSTALD && !costald {
		p.values, p.farthest = nil, 0
	}
	p.onlyCOSTALD, p.used = costald, true
	p.values = append(p.values, theirs)
	if d := deviation(p.ours, theirs); math.Abs(d) > math.Abs(p.farthest) {
		p.farthest, p.farthestSource = d, source
	}
}

func deviation(ours, theirs float64) float64 { return (ours/theirs - 1) * 100 }

func median(values []float64) float64 {
	v := slices.Sorted(slices.Values(values))
	n := len(v)
	return (v[(n-1)/2] + v[n/2]) / 2
}

// worst returns the point farthest from the middle, and the one farthest from any source. Vapour pressures below
// 1 kPa count only where nothing else is there, below 10 Pa never: no rule turns on them.
func worst(points []*point, what string) (middle, farthest *point) {
	for _, floor := range []float64{1000, 10} {
		for _, p := range points {
			if what == "psat" && p.ours < floor {
				continue
			}
			if middle == nil || math.Abs(p.middle) > math.Abs(middle.middle) {
				middle = p
			}
			if farthest == nil || math.Abs(p.farthest) > math.Abs(farthest.farthest) {
				farthest = p
			}
		}
		if middle != nil {
			break
		}
	}
	return middle, farthest
}
