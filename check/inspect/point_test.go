package inspect_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/inspect"
	"lineworthy/check/report"
)

func asked(i *inspect.Item) string {
	var keys []string
	for _, f := range i.Fields {
		keys = append(keys, f.Key)
	}
	return strings.Join(keys, " ")
}

// TestAsked: what the sheet counts on is on the list, wherever a plate, a label or an eye can show it.
func TestAsked(t *testing.T) {
	bolted := edited(t, "acetone-pump", "marked: acetone\n        seal", "marked: acetone\n        bolts: 4\n        seal")
	closed := edited(t, "acetone-pump", "    points:\n      inlet: {", "    points:\n      drain: {closed_by: cap}\n      inlet: {")
	limited := edited(t, "ammonia-lpg-hose", "kind: excess-flow", "kind: excess-flow\n        closing_flow: 30 m3/h")
	for _, x := range []struct{ path, item, keys string }{
		{butanone, "cylinder of pad", "damage contents pressure"},
		{shipped("air-tools"), "supply of air", "damage contents pressure"},
		{butanone, "returnable", "damage rated relief_set vent filled bonded marked"},
		{butanone, "returnable/liquid", "marked"}, // the second opening of a vessel that is on the list
		{shipped("acid-into-hypochlorite-corrected"), "hypochlorite-tank/fill", "marked shut padlocked"},
		{closed, "mixer/drain", "shut closed_by"},
		{bolted, "container.outlet to V1.inlet", "damage seal bolts"},
		{limited, "XF1", "damage rated closing_flow bonded"},
		{shipped("air-tools"), "H1", "condition tag marks readable tested rated made bend restraint"},
	} {
		l, _ := listOf(t, engine(t), x.path)
		require.Equal(t, x.keys, asked(item(t, l, x.item)), "%s %s", x.path, x.item)
	}
	unrated, _ := listOf(t, engine(t), edited(t, "cip-dairy", "        rated: 10 bar(g)\n        burst", "        burst"))
	require.Contains(t, asked(item(t, unrated, "H1")), "rated")
	regulated, _ := listOf(t, engine(t), butanone)
	require.Contains(t, regulated.Form(), "PR1 set to 3 bar(g)")
}

// TestAskedReadings: each of them read wrong keeps the line from being used.
func TestAskedReadings(t *testing.T) {
	for _, x := range []struct{ line, at, reading, said string }{
		{"butanone-day-tank", "cylinder of pad/contents", "oxygen", "contents reads oxygen, and the sheet says nitrogen"},
		{"butanone-day-tank", "cylinder of pad/contents", "none", "another source"},
		{"butanone-day-tank", "cylinder of pad/pressure", "300 bar(g)", "pressure/"}, // regulator inlet rated 230 bar(g)
		{"butanone-day-tank", "returnable/relief_set", "9 bar(g)", "it is not the device judged"},
		{"butanone-day-tank", "day-tank/vent", "closed", "vent reads closed, and the sheet says open"},
		{"butanone-day-tank", "returnable/liquid/marked", "nitrogen", "another point"},
		{"butanone-day-tank", "hold regulators/passed", "no", "was not passed"},
		{"acid-into-hypochlorite-corrected", "hypochlorite-tank/fill/shut", "no", "answered with no"},
		{"acid-into-hypochlorite-corrected", "hypochlorite-tank/fill/padlocked", "no", "the sheet counts on that"},
		{"air-tools", "H1/restraint", "no", "answered with no"},
		{"air-tools", "H1/bend", "100 mm", "needs at least 200 mm"}, // least bend 200 mm
		{"air-tools", "supply of air/contents", "nitrogen", "another source"},
	} {
		r := inspected(t, shipped(x.line), map[string]string{x.at: x.reading})
		require.Equal(t, report.Unfit, r.Word, "%+v %s", x, r.Reason)
		said := ""
		for _, f := range r.FromReadings {
			said += f.Rule + " " + f.Message
		}
		for _, j := range r.Rejected {
			said += j.Says
		}
		require.Contains(t, said, x.said)
	}
	half := inspected(t, butanone, map[string]string{"cylinder of pad/pressure": "90 bar(g)"})
	require.Equal(t, report.Conditional, half.Word)
	require.Empty(t, half.FromReadings)
	tight := inspected(t, shipped("acid-into-hypochlorite-corrected"), map[string]string{"acid-tank/marked": "Sulfuric Acid 30%"})
	require.Empty(t, tight.Rejected)
	other := inspected(t, shipped("acid-into-hypochlorite-corrected"), map[string]string{"acid-tank/marked": "Sulfuric Acid 3.0 %"})
	require.Len(t, other.Rejected, 1)
	n2 := inspected(t, butanone, map[string]string{"cylinder of pad/contents": "Nitrogen"})
	require.Equal(t, report.Conditional, n2.Word)
}

// TestFindOut: what could not be judged says what to find out.
func TestFindOut(t *testing.T) {
	r := inspected(t, shipped("palm-oil-tanker"), nil)
	require.Contains(t, r.Text(report.Options{}), "Find out: ")
}
