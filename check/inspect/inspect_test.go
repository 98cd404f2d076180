package inspect_test

import (
	"context"
	"fmt"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/inspect"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

var day = units.Date{Days: 20782} // 2026-11-25

const ammonia = "../../testdata/lines/ammonia-nurse/line.yaml"

var shared = sync.OnceValues(func() (*check.Engine, error) {
	return check.New(context.Background(), check.Options{AsOf: day})
})

func engine(t *testing.T) *check.Engine {
	t.Helper()
	e, err := shared()
	require.NoError(t, err)
	return e
}

func listOf(t *testing.T, e *check.Engine, path string) (*inspect.List, *sheet.Line) {
	t.Helper()
	s, err := sheet.Read(path)
	require.NoError(t, err)
	f, err := e.Facts(s)
	require.NoError(t, err)
	l, err := inspect.New(s, catalog.Open(), day, f, check.ShownAs(s))
	require.NoError(t, err)
	return l, s
}

// fill writes the record as somebody would who finds everything as the sheet says, but for what is changed.
func fill(l *inspect.List, changed map[string]string) string {
	var b strings.Builder
	put := func(path, key, text string) {
		if c, ok := changed[path+"/"+key]; ok {
			text = c
		}
		fmt.Fprintf(&b, "    %s: %q\n", key, text)
	}
	fmt.Fprintf(&b, "line: %q\nsheet_sha256: %q\nday: \"2026-11-25\"\nitems:\n", l.Line, l.Sum)
	for _, i := range l.Items {
		fmt.Fprintf(&b, "  - id: %q\n", i.ID)
		for _, f := range i.Fields {
			text := f.Expect
			switch {
			case f.Key == "damage":
				text = "none"
			case f.Key == "at_rest", f.Key == "shut", f.Key == "restraint":
				text = "yes"
			}
			put(i.ID, f.Key, text)
		}
	}
	b.WriteString("leak_tests:\n")
	for _, t := range l.Tests {
		fmt.Fprintf(&b, "  - run: %q\n", t.Run)
		put("leak "+t.Run, "pressure", t.Pressure)
		put("leak "+t.Run, "fluid", "nitrogen")
		put("leak "+t.Run, "leaks", "no")
	}
	b.WriteString("holds:\n")
	for _, h := range l.Holds {
		fmt.Fprintf(&b, "  - id: %q\n", h.ID)
		put("hold "+h.ID, "passed", "yes")
	}
	return b.String()
}

func inspected(t *testing.T, path string, changed map[string]string) *inspect.Result {
	t.Helper()
	e := engine(t)
	l, s := listOf(t, e, path)
	f, err := l.Merge([]byte(fill(l, changed)))
	require.NoError(t, err)
	plain, err := sheet.Read(path)
	require.NoError(t, err)
	base, err := e.Check(context.Background(), plain)
	require.NoError(t, err)
	now, err := e.Check(context.Background(), s)
	require.NoError(t, err)
	return f.Judge("A. Example", base, now)
}

// TestReadings: each planted reading is found, and what is found comes from the readings. The limit of 100 ohm for grade
// M is that of ISO 2928:2021 (published); defects as in 49 CFR 180.416(g)(1) (published).
func TestReadings(t *testing.T) {
	for name, x := range map[string]struct {
		at, reading string
		word        report.Word
		found       string // rule, or what is said here
	}{
		"wrong hose":            {"H1/tag", "AN-05-H9", report.Unfit, "identity/hose_not_the_assigned_one"},
		"kink":                  {"H1/condition", "kinked", report.Unfit, "inspection/rejected_condition"},
		"overdue":               {"H1/tested", "2025-11-24", report.Unfit, "inspection/pressure_test_overdue"},
		"due today":             {"H1/tested", "2025-11-25", report.Conditional, ""},
		"3 kohm on grade M":     {"H1/resistance", "3 kohm", report.Unfit, "static/resistance_above_grade"},
		"100 ohm on grade M":    {"H1/resistance", "100 ohm", report.Conditional, ""},
		"101 ohm on grade M":    {"H1/resistance", "101 ohm", report.Unfit, "static/resistance_above_grade"},
		"seal missing":          {"V1.outlet to H1.inlet/seal", "none", report.Unfit, "seal/missing"},
		"marks not to be read":  {"H1/readable", "no", report.Unfit, "marking/marks_unreadable"},
		"lower rating on plate": {"V1/rated", "100 psig", report.Unfit, "pressure/rating_below_demand"},
		"valve stuck":           {"V1/damage", "handle does not move", report.Unfit, "damage found"},
		"it leaks":              {"leak liquid/leaks", "yes", report.Unfit, "it leaks"},
		"tested with air":       {"leak liquid/fluid", "compressed air", report.Unfit, "carries what can burn"},
		"tested too high":       {"leak liquid/pressure", "20.2 bar(g)", report.Unfit, "above the 292 psig that the line may see"},
		"tested too low":        {"leak liquid/pressure", "5 bar(g)", report.Unproven, ""},
		"hold point not passed": {"hold stop/passed", "no", report.Unfit, "was not passed"},
		"clean":                 {"", "", report.Conditional, ""},
	} {
		t.Run(name, func(t *testing.T) {
			r := inspected(t, ammonia, map[string]string{x.at: x.reading})
			require.Equal(t, x.word, r.Word, "%+v", r)
			require.Empty(t, r.FromSheet)
			said := ""
			for _, f := range r.FromReadings {
				said += f.Rule + " "
			}
			for _, f := range r.Rejected {
				said += f.Says + " "
			}
			if x.found == "" {
				require.Empty(t, said)
			}
			require.Contains(t, said, x.found)
		})
	}
}

// TestNothingRead: every reading that is left out or left empty keeps the line from being cleared.
func TestNothingRead(t *testing.T) {
	l, _ := listOf(t, engine(t), ammonia)
	for _, i := range l.Items {
		for _, f := range i.Fields {
			l, _ := listOf(t, engine(t), ammonia)
			filled, err := l.Merge([]byte(fill(l, map[string]string{i.ID + "/" + f.Key: ""})))
			require.NoError(t, err)
			require.Len(t, filled.Open, 1, i.ID+" "+f.Key)
			require.Contains(t, filled.Open[0], i.ID+": "+f.Key)
		}
	}
	filled, err := l.Merge([]byte("line: AN-05\nsheet_sha256: " + l.Sum + "\nday: 2026-11-25\n"))
	require.NoError(t, err)
	require.Greater(t, len(filled.Open), 30)
}

func TestBadRecord(t *testing.T) {
	e := engine(t)
	for name, x := range map[string]struct{ from, to, want string }{
		"other line":    {`line: "AN-05"`, "line: AN-06", "AN-06"},
		"other sheet":   {"sheet_sha256: \"", "sheet_sha256: \"0", "print the list anew"},
		"no day":        {"day: \"2026-11-25\"", "day: \"\"", "day of the inspection"},
		"unknown item":  {`id: "H1"`, `id: "H9"`, `"H9" is not on the list`},
		"unknown key":   {"    tag:", "    tags:", `no reading "tags"`},
		"unknown word":  {`condition: "sound, cover-pricked"`, "condition: bent", "use sound, kinked"},
		"no unit":       {`resistance: "3 ohm"`, `resistance: "3"`, "resistance of H1"},
		"unknown entry": {"holds:", "hold_points:", "hold_points"},
		"no digest":     {"sheet_sha256: \"", "# \"", "sheet_sha256 is missing"},
		"second record": {"holds:", "---\nholds:", "a file holds one record"},
		"no id":         {`id: "H1"`, `identity: "H1"`, "without its id"},
		"given twice":   {"day: ", "day: 2026-11-24\nday: ", "day is given twice"},
		"no list":       {"items:", "items: none\nx:", "items: write it as a list"},
		"hidden":        {`tag: "AN-05-H1"`, `tag: "AN-05-H1\e[2J"`, "tag: it holds characters that cannot be printed"},
		"other text":    {`tag: "AN-05-H1"`, "tag: \"Bl\xe4schen\"", "save it as UTF-8"},
	} {
		t.Run(name, func(t *testing.T) {
			l, _ := listOf(t, e, ammonia)
			text := fill(l, nil)
			require.Contains(t, text, x.from)
			_, err := l.Merge([]byte(strings.Replace(text, x.from, x.to, 1)))
			require.ErrorContains(t, err, x.want)
		})
	}
}
