package register_test

import (
	"context"
	"encoding/csv"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/register"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

func shippedFolder(t *testing.T, change func(name, text string) string) string {
	dir := t.TempDir()
	paths, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	for _, p := range paths {
		text, err := os.ReadFile(p)
		require.NoError(t, err)
		name := filepath.Base(filepath.Dir(p))
		require.NoError(t, os.WriteFile(filepath.Join(dir, name+".yaml"), []byte(change(name, string(text))), 0o644))
	}
	return dir
}

func asIs(_, text string) string { return text }

func setUp(t *testing.T, dir string) (register.Options, *check.Engine) {
	day, err := units.ParseDate("2026-11-25")
	require.NoError(t, err)
	cat := catalog.Open()
	e, err := check.New(context.Background(), check.Options{Catalog: cat, AsOf: day, Version: "test"})
	require.NoError(t, err)
	judge := func(ctx context.Context, l *sheet.Line) (*report.Verdict, error) {
		return e.Summary(ctx, l, register.DueRules...)
	}
	return register.Options{Dir: dir, AsOf: day, DueDays: 90, Judge: judge, Catalog: cat,
		Basis: register.Basis{Tool: "test", Rows: map[string]string{}}}, e
}

func open(t *testing.T, o register.Options) *register.Register {
	r, err := register.Run(context.Background(), o)
	require.NoError(t, err)
	t.Cleanup(func() { require.NoError(t, r.Close()) })
	return r
}

// TestSaysWhatCheckSays holds every row to the verdict that the line gets alone.
func TestSaysWhatCheckSays(t *testing.T) {
	dir := shippedFolder(t, asIs)
	o, e := setUp(t, dir)
	last, n := "", 0
	for x, err := range open(t, o).Entries() {
		require.NoError(t, err)
		require.Less(t, last, x.Path, "the order is that of the paths")
		last, n = x.Path, n+1
		line, err := sheet.Read(filepath.Join(dir, x.Path))
		require.NoError(t, err)
		v, err := e.Check(context.Background(), line)
		require.NoError(t, err)
		assert.Equal(t, v.Word, x.Word, x.Path)
		assert.Equal(t, v.Digests.Sheet, x.Sum)
		assert.Len(t, x.Confirm, len(v.Confirm))
		assert.Equal(t, len(v.Unjudged), x.Missing)
	}
	assert.Greater(t, n, 20)
}

// TestDueDates reckons the dates anew with the calendar of the standard library.
func TestDueDates(t *testing.T) {
	o, _ := setUp(t, shippedFolder(t, func(name, text string) string {
		if name == "lpg-bobtail" { // tested 2026-06-08 every 12 months, made 2024-05 with a life of 6 years, inspected 2026-11-24
			return strings.Replace(text, "safeguards:", "change: {record: MC-1, what: other pump, in_kind: no, authorised: 2026-11-01, until: 2026-12-31}\nsafeguards:", 1)
		}
		return text
	}))
	o.DueDays = 5000
	got := map[string]bool{}
	for d, err := range open(t, o).Due() {
		require.NoError(t, err)
		if d.Line == "LP-22" {
			got[fmt.Sprint(d.What, " ", d.Part, " ", d.Date, " ", d.Days)] = true
		}
	}
	day := func(y int, m time.Month, d int) time.Time { return time.Date(y, m, d, 0, 0, 0, 0, time.UTC) }
	want := map[string]bool{}
	for what, on := range map[string]time.Time{
		"pressure test H1":         day(2026, 6, 8).AddDate(1, 0, 0),
		"pressure test RV1":        day(2026, 6, 8).AddDate(1, 0, 0),
		"resistance test H1":       day(2026, 6, 8).AddDate(0, 0, 365),
		"inspection H1":            day(2026, 11, 24).AddDate(0, 0, 365),
		"end of service life H1":   day(2024, 5, 1).AddDate(6, 0, 0),
		"end of temporary change ": day(2026, 12, 31),
	} {
		days := int(on.Sub(day(2026, 11, 25)).Hours() / 24)
		want[fmt.Sprint(what, " ", on.Format(time.DateOnly), " ", days)] = true
	}
	assert.Equal(t, want, got)
}

// TestDueOfAnEarlierSheet: what a later sheet of the line replaces is marked as such, however the number is written.
func TestDueOfAnEarlierSheet(t *testing.T) {
	dir := shippedFolder(t, asIs)
	text, err := os.ReadFile(filepath.Join(dir, "lpg-bobtail.yaml"))
	require.NoError(t, err)
	older := strings.NewReplacer("line: LP-22", "line: lp-22", "as_of: 2026-11-25", "as_of: 2026-06-30").Replace(string(text))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "older.yaml"), []byte(older), 0o644))
	o, _ := setUp(t, dir)
	o.DueDays = 5000
	r, n := open(t, o), map[bool]int{}
	for d, err := range r.Due() {
		require.NoError(t, err)
		require.Equal(t, d.Path == "older.yaml", d.Earlier, d)
		n[d.Earlier]++
	}
	require.NotZero(t, n[true])
	require.NotZero(t, n[false])
	var out strings.Builder
	require.NoError(t, r.Write(&out, "text", "due"))
	require.Equal(t, n[true], strings.Count(out.String(), ", of an earlier sheet\n"))
}

func TestDueReachesSoFar(t *testing.T) {
	o, _ := setUp(t, shippedFolder(t, asIs))
	for days, want := range map[int]bool{76: false, 77: true, 78: true} { // KD-104 is due on 2027-02-10
		o.DueDays = days
		found := false
		for d, err := range open(t, o).Due() {
			require.NoError(t, err)
			found = found || d.Line == "KD-104"
		}
		assert.Equal(t, want, found, days)
	}
}

// TestImpact changes sheets and the basis between two runs, and wants each flip with its cause.
func TestImpact(t *testing.T) {
	o, _ := setUp(t, shippedFolder(t, asIs))
	o.State = filepath.Join(t.TempDir(), "before")
	r, err := register.Run(context.Background(), o)
	require.NoError(t, err)
	require.NoError(t, r.Close())

	o.Dir = shippedFolder(t, func(name, text string) string {
		if name == "lpg-bobtail" {
			return strings.Replace(text, "condition: [sound, cover-pricked]", "condition: [leaking]", 1)
		}
		return text
	})
	require.NoError(t, os.Remove(filepath.Join(o.Dir, "caustic-drum.yaml")))
	o.Against, o.State = o.State, ""
	o.Basis.Rules = "other"
	r = open(t, o)
	var all []register.Change
	for c, err := range r.Changes() {
		require.NoError(t, err)
		all = append(all, c)
	}
	require.Len(t, all, 1, "an equal verdict on other rules is no change")
	c := all[0]
	assert.Equal(t, "LP-22 conditional unfit", fmt.Sprint(c.Line, " ", c.Was, " ", c.Is))
	assert.Contains(t, c.Appeared, "stop inspection/rejected_condition")
	assert.Equal(t, []string{"sheet", "rules"}, c.Differs)
	gone, err := r.Gone()
	require.NoError(t, err)
	require.Len(t, gone, 1)
	assert.Equal(t, "CS-17 caustic-drum.yaml unfit gone true", fmt.Sprint(gone[0].Line, " ", gone[0].Path, " ", gone[0].Was, " ", gone[0].Is, " ", gone[0].Flips))
}

func TestSameFileTwice(t *testing.T) {
	o, _ := setUp(t, shippedFolder(t, asIs))
	o.State = filepath.Join(t.TempDir(), "s")
	r, err := register.Run(context.Background(), o)
	require.NoError(t, err)
	require.NoError(t, r.Close())
	o.Against = o.State
	_, err = register.Run(context.Background(), o)
	assert.ErrorContains(t, err, "same file")
}

// TestTablesHaveTheirHeads reads every table back as CSV (RFC 4180): each row has as many cells as the head.
func TestTablesHaveTheirHeads(t *testing.T) {
	o, _ := setUp(t, shippedFolder(t, func(name, text string) string {
		if name == "air-tools" {
			return "line: [\n"
		}
		return text
	}))
	r := open(t, o)
	for _, table := range register.Tables {
		var b strings.Builder
		require.NoError(t, r.Write(&b, "csv", table))
		rows, err := csv.NewReader(strings.NewReader(b.String())).ReadAll()
		require.NoError(t, err, table)
		assert.Equal(t, table != "impact", len(rows) > 1, table)
	}
}
