package inspect_test

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"lineworthy/check/inspect"
	"lineworthy/check/report"
)

// TestWalk: every part of every shipped line is on its list once, each joint between the two things it joins.
func TestWalk(t *testing.T) {
	all, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, all)
	e := engine(t)
	for _, path := range all {
		l, s := listOf(t, e, path)
		at := map[string]int{}
		for n, i := range l.Items {
			require.NotContains(t, at, i.ID, path)
			at[i.ID] = n
			require.NotEmpty(t, i.Fields, path+i.ID)
			require.NotEmpty(t, i.Reject, path+i.ID)
		}
		for _, r := range s.Runs {
			for _, p := range r.V.Parts {
				require.Contains(t, at, p.ID.V, path)
			}
		}
		for _, i := range l.Items {
			if a, b, ok := strings.Cut(i.ID, " to "); ok && i.Kind == "joint" {
				left, _, _ := strings.Cut(a, ".")
				right, _, _ := strings.Cut(b, ".")
				if left == right {
					continue // the mount of a branch is named after the branch
				}
				if l, ok := at[left]; ok {
					require.Less(t, l, at[i.ID], path)
				}
				if r, ok := at[right]; ok && l.Items[r].Kind != "vessel" {
					require.Greater(t, r, at[i.ID], path)
				}
			}
		}
		formIsYAML(t, l)
		page, err := l.HTML()
		require.NoError(t, err)
		require.NotContains(t, page, "<script")
		require.Contains(t, l.Text(report.Options{}), "safety data sheet, section 8")
	}
}

func formIsYAML(t *testing.T, l *inspect.List) {
	t.Helper()
	var form struct {
		Line  string
		Items []map[string]string
	}
	require.NoError(t, yaml.Unmarshal([]byte(l.Form()), &form))
	require.Equal(t, l.Line, form.Line)
	require.Len(t, form.Items, len(l.Items))
	filled, err := l.Merge([]byte(strings.Replace(l.Form(), `day: ""`, "day: 2026-11-25", 1)))
	require.NoError(t, err)
	require.Empty(t, filled.Readings)
}

// TestLeakTest: never above the lowest rating or nine tenths of a relief device, never air where something burns.
func TestLeakTest(t *testing.T) {
	l, _ := listOf(t, engine(t), ammonia)
	require.Len(t, l.Tests, 1)
	require.Equal(t, "166 psig", l.Tests[0].Pressure) // ammonia at 32 °C with 1 m of head, as the check command has it
	require.Contains(t, l.Tests[0].Why, "at most 292 psig (nine tenths of the set pressure of RV1)")
	require.Contains(t, l.Tests[0].Fluid, "never air")
}

// TestLeakTestRegulated: behind a regulator the set pressure counts, not that of the cylinder. 3 bar(g) is the set of the
// sheet, and 5.4 bar(g) nine tenths of 6 bar(g).
func TestLeakTestRegulated(t *testing.T) {
	l, _ := listOf(t, engine(t), "../../testdata/lines/butanone-day-tank/line.yaml")
	require.Equal(t, "3.0 bar(g)", l.Tests[0].Pressure)
	require.Contains(t, l.Tests[0].Why, "at most 5.4 bar(g)")
	for _, path := range []string{"oxygen/line.yaml", "pump/line.yaml"} { // no rating is stated
		l, _ := listOf(t, engine(t), "../../testdata/sequences/"+path)
		require.Empty(t, l.Tests[0].Pressure)
		require.Contains(t, l.Tests[0].Why, "is not known")
		require.Contains(t, l.Text(report.Options{Width: 200}), "none can be given (")
	}
}

// TestEquipment: what to wear follows from each fluid, from what the vessels hold and from the heat, and forgets none.
func TestEquipment(t *testing.T) {
	const acid = "acid-into-hypochlorite-corrected"
	cold := edited(t, "caustic-drum", "carries: [product", "carries: [cold, product", "\nvessels:", "\n  cold: {fluid: water, temperature: {normal: 20 °C, highest: 20 °C}}\nvessels:")
	for _, x := range []struct {
		path, text string
		told       bool
	}{
		{ammonia, "breathing protection", true},
		{shipped("cip-dairy"), "breathing protection", false},
		{shipped("air-tools"), "free of oil", false}, // air is no oxidiser to dress for
		{shipped("oxygen-furnace"), "free of oil", true},
		{shipped(acid), "Sodium hypochlorite solution in hypochlorite-tank is corrosive", true},
		{shipped(acid), "acid-tank", false}, // it holds what is carried
		{shipped(acid), "free of oil", false},
		{shipped(acid), "an escape set for breathing", true}, // acid and hypochlorite give off chlorine
		{butanone, "an escape set", false},
		{butanone, "gloves of a material that the data sheet names", true},
		{butanone, "a burning gas", false},
		{shipped("hydrogen-reactor"), "a burning gas is put out by shutting its source", true},
		{shipped("hydraulic-rig"), "a fine jet goes through skin", true},
		{shipped("cip-dairy"), "a fine jet", false},
		{shipped("steam-sterilise"), "face shield, gloves, sleeves and apron against heat", true},
		{cold, "against heat", true}, // one fluid twice, the second time hot
	} {
		l, _ := listOf(t, engine(t), x.path)
		told := slices.ContainsFunc(l.Equipment, func(a inspect.Advice) bool { return strings.Contains(a.Text+" "+a.Why, x.text) })
		require.Equal(t, x.told, told, "%s: %s", x.path, x.text)
	}
}

// TestPrint: loose pages can be told apart and put in order, a heading stays with its table, and no name breaks out of the style.
func TestPrint(t *testing.T) {
	l, _ := listOf(t, engine(t), edited(t, "cip-dairy", "line: CI-25", `line: 'CI-25"; } </style><b>'`))
	page, err := l.HTML()
	require.NoError(t, err)
	require.Contains(t, page, "h2, h2 + p { break-after: avoid; }")
	require.Contains(t, page, `"page " counter(page) " of " counter(pages)`)
	require.Contains(t, page, "sheet "+l.Sum[:12])
	require.NotContains(t, page, "<b>")
	require.Equal(t, 1, strings.Count(page, "</style>"))
}

// TestOfThatDay: a line that is cleared is so for one job.
func TestOfThatDay(t *testing.T) {
	const once = "for the job of that day"
	require.Contains(t, inspected(t, ammonia, nil).Text(report.Options{}), once)
	require.NotContains(t, inspected(t, ammonia, map[string]string{"H1/condition": "kinked"}).Text(report.Options{}), once)
}
