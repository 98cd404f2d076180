package measure_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/measure"
)

// Worked by hand from the definition; the sphere is that of NBR (Hansen 2007 Table A.2 row 31, restated), the liquids
// those of Diaz de los Rios and Murcia Belmonte 2022 (restated).
func TestRelativeDistance(t *testing.T) {
	nbr := measure.Solubility{D: 18.62, P: 8.78, H: 4.17}
	acetone := measure.Solubility{D: 15.5, P: 10.4, H: 7} // 4*3.12^2 + 1.62^2 + 2.83^2 = 49.57
	assert.InDelta(t, 7.0406, measure.SolubilityDistance(acetone, nbr), 1e-3)
	assert.InDelta(t, 7.0406/9.62, measure.RelativeDistance(acetone, nbr, 9.62), 1e-4)
	assert.Zero(t, measure.RelativeDistance(nbr, nbr, 9.62))
	assert.Equal(t, measure.SolubilityDistance(acetone, nbr), measure.SolubilityDistance(nbr, acetone))
	assert.True(t, math.IsInf(measure.RelativeDistance(acetone, nbr, 0), 1), "no sphere, no prediction")
}

// The organic fluids with known parameters; inorganic ones are no use to the method. In the reactive ones damage is
// chemical, which the method cannot see.
var (
	inorganic = []string{"ammonia", "carbon-dioxide", "chlorine", "hydrogen-peroxide-100", "phosgene", "sulfur-dioxide", "water"}
	reactive  = []string{"acetic-acid", "acrylic-acid", "formic-acid", "aniline", "ethanolamine", "ethylenediamine", "triethylamine", "pyridine",
		"tdi", "ethylene-oxide", "propylene-oxide"}
)

// shipped is shared by all samples: the rows are decoded once.
var shipped = catalog.Open()

// tally counts how RED below a cut-off agrees with the rating "unsuitable".
type tally struct{ hit, falseAlarm, miss, pass int }

func (c tally) pairs() int         { return c.hit + c.falseAlarm + c.miss + c.pass }
func (c tally) accuracy() float64  { return float64(c.hit+c.pass) / float64(c.pairs()) }
func (c tally) precision() float64 { return float64(c.hit) / float64(c.hit+c.falseAlarm) }
func (c tally) recall() float64    { return float64(c.hit) / float64(c.hit+c.miss) }

// mcc is the correlation of two yes-or-no answers (Matthews 1975).
func (c tally) mcc() float64 {
	tp, fp, fn, tn := float64(c.hit), float64(c.falseAlarm), float64(c.miss), float64(c.pass)
	return (tp*tn - fp*fn) / math.Sqrt((tp+fp)*(tp+fn)*(tn+fp)*(tn+fn))
}

// sample says which pairs are counted.
type sample struct {
	name             string
	family           string // of the polymer; empty for all
	only             []string
	physical, single bool // without reactive fluids; only rows set for the fluid itself
	cut              float64
}

func (s sample) count(t *testing.T) tally {
	t.Helper()
	var c tally
	for _, id := range shipped.IDs(catalog.Fluids) {
		f, err := shipped.Fluid(id)
		require.NoError(t, err)
		if f.Hansen == nil || slices.Contains(inorganic, id) || s.physical && slices.Contains(reactive, id) {
			continue
		}
		for _, m := range shipped.IDs(catalog.Materials) {
			s.judge(t, &c, f, m)
		}
	}
	return c
}

func (s sample) judge(t *testing.T, c *tally, f *catalog.Fluid, material string) {
	t.Helper()
	m, err := shipped.Material(material)
	require.NoError(t, err)
	if m.Hansen == nil || s.family != "" && m.Family != s.family || s.only != nil && !slices.Contains(s.only, material) {
		return
	}
	rows, err := f.Rows(material)
	require.NoError(t, err)
	rows = slices.DeleteFunc(slices.Clone(rows), func(r catalog.Row) bool { return s.single && r.Family })
	if len(rows) == 0 {
		return
	}
	bad := slices.ContainsFunc(rows, func(r catalog.Row) bool { return r.Rating == "unsuitable" })
	liquid, centre := measure.Solubility{D: f.Hansen.D, P: f.Hansen.P, H: f.Hansen.H}, measure.Solubility{D: m.Hansen.D, P: m.Hansen.P, H: m.Hansen.H}
	c.add(bad, measure.RelativeDistance(liquid, centre, m.Hansen.R) < s.cut)
}

func (c *tally) add(bad, inside bool) {
	switch {
	case bad && inside:
		c.hit++
	case inside:
		c.falseAlarm++
	case bad:
		c.miss++
	default:
		c.pass++
	}
}

// TestRelativeDistanceAgreement reproduces the agreement of RED < 1 with "unsuitable" that was computed when the
// ratings were collected, over 60 fluids and 1278 pairs. The catalog holds parameters for 58 of those fluids and 1231
// pairs, so the counts differ a little and the scores may differ by 0.05. The pairs are not independent and most
// ratings and spheres are recalled: agreement is no proof of either.
func TestRelativeDistanceAgreement(t *testing.T) {
	want := []struct {
		sample
		pairs                            int
		accuracy, precision, recall, mcc float64
	}{
		{sample{name: "all pairs", cut: 1}, 1278, .73, .59, .59, .39},
		{sample{name: "physical", physical: true, cut: 1}, 1067, .74, .59, .65, .42},
		{sample{name: "physical, elastomers", family: "elastomer", physical: true, cut: 1}, 420, .74, .85, .72, .47},
		{sample{name: "the same, cut-off 1.2", family: "elastomer", physical: true, cut: 1.2}, 420, .75, .82, .80, .47},
		{sample{name: "the same, rated one by one", family: "elastomer", physical: true, single: true, cut: 1}, 155, .62, .72, .58, .25},
		{sample{name: "NBR and NR only", only: []string{"NBR", "NR"}, physical: true, cut: 1}, 93, .87, .91, .91, .69},
		{sample{name: "physical, plastics", family: "plastic", physical: true, cut: 1}, 647, .74, .16, .35, .10},
	}
	var table strings.Builder
	fmt.Fprintf(&table, "\n%-28s %6s %5s %5s %5s %5s  acc. prec. rec.  mcc\n", "sample", "pairs", "hit", "false", "miss", "pass")
	for _, w := range want {
		c := w.count(t)
		fmt.Fprintf(&table, "%-28s %6d %5d %5d %5d %5d  %.2f %.2f  %.2f %5.2f\n", w.name, c.pairs(), c.hit, c.falseAlarm, c.miss, c.pass,
			c.accuracy(), c.precision(), c.recall(), c.mcc())
		assert.InEpsilon(t, w.pairs, c.pairs(), 0.12, w.name)
		for what, pair := range map[string][2]float64{"accuracy": {w.accuracy, c.accuracy()}, "precision": {w.precision, c.precision()},
			"recall": {w.recall, c.recall()}, "mcc": {w.mcc, c.mcc()}} {
			assert.InDelta(t, pair[0], pair[1], 0.05, "%s of %s", what, w.name)
		}
	}
	t.Log(table.String())
}

// Why the warning is for elastomers only: on plastics four alarms of five are false, and most attackers are missed.
func TestRelativeDistanceFailsOnPlastics(t *testing.T) {
	c := sample{family: "plastic", physical: true, cut: 1}.count(t)
	assert.Greater(t, c.falseAlarm, 4*c.hit)
	assert.Less(t, c.recall(), 0.5)
	e := sample{family: "elastomer", physical: true, cut: 1}.count(t)
	assert.Greater(t, e.precision(), 0.8)
}
