package register

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

const (
	noon   = "2026-11-25"
	many   = 300
	broken = "line: [\n"
)

func dayOf(t testing.TB, text string) units.Date {
	d, err := units.ParseDate(text)
	require.NoError(t, err)
	return d
}

var (
	lineKey = regexp.MustCompile(`(?m)^line: (\S+)`)
	tagKey  = regexp.MustCompile(`\b(tag|assigned): ([\w-]+)`)
	tested  = regexp.MustCompile(`\btested: 2026-\d\d`)
)

// varied is the n-th sheet of a made-up register: a shipped line under another number, with hoses and test months of its own.
func varied(shipped []string, n int) string {
	turn := n / len(shipped)
	text := lineKey.ReplaceAllString(shipped[n%len(shipped)], fmt.Sprintf("line: $1-%03d", turn))
	text = tagKey.ReplaceAllString(text, fmt.Sprintf("$1: $2-%03d", turn))
	return tested.ReplaceAllString(text, fmt.Sprintf("tested: 2026-%02d", 3+turn%8))
}

func shipped(t testing.TB) (texts []string) {
	paths, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, p := range paths {
		text, err := os.ReadFile(p)
		require.NoError(t, err)
		texts = append(texts, string(text))
	}
	return texts
}

// generated is a folder of n varied sheets, and one broken sheet if n is many.
func generated(t testing.TB, n int) string {
	dir, texts := t.TempDir(), shipped(t)
	for i := range n {
		put(t, dir, fmt.Sprintf("unit-%d/%04d.yaml", i/50, i), varied(texts, i))
	}
	if n == many {
		put(t, dir, "unit-3/0000-broken.yml", broken)
	}
	return dir
}

func put(t testing.TB, dir, rel, text string) {
	path := filepath.Join(dir, filepath.FromSlash(rel))
	require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
	require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
}

// madeUp judges without the rules engine: the answer follows from the letters of the line number.
func madeUp(_ context.Context, l *sheet.Line) (*report.Verdict, error) {
	if strings.HasPrefix(l.ID.V, "HY") {
		return nil, errors.New("made-up fault")
	}
	sum := 0
	for _, r := range l.ID.V {
		sum += int(r)
	}
	word := []report.Word{report.Fit, report.Conditional, report.Unproven, report.Unfit}[sum%4]
	day := noon
	if l.AsOf.Set {
		day = l.AsOf.V.String()
	}
	return &report.Verdict{Line: l.ID.V, AsOf: day, Word: word, Reason: "letters " + l.ID.V}, nil
}

func options(t testing.TB, dir string) Options {
	return Options{Dir: dir, AsOf: dayOf(t, noon), DueDays: 90, Workers: 3, Judge: madeUp, Catalog: catalog.Open(),
		Basis: Basis{Tool: "test", Rules: "r1", Rows: map[string]string{}}}
}

func run(t testing.TB, o Options) *Register {
	r, err := Run(context.Background(), o)
	require.NoError(t, err)
	t.Cleanup(func() { _ = r.Close() })
	return r
}

// written is all that a register says, in one form.
func written(t testing.TB, r *Register, format string) string {
	var b strings.Builder
	require.NoError(t, r.Write(&b, format, ""))
	return b.String()
}

// TestOddFiles: what cannot be read is named as the register names it, and a name that is no UTF-8 is judged all the same.
func TestOddFiles(t *testing.T) {
	dir := t.TempDir()
	put(t, dir, "huge.yaml", strings.Repeat("a", maxBytes+1))
	put(t, dir, "odd\xff.yaml", shipped(t)[0])
	require.NoError(t, os.Symlink("nowhere", filepath.Join(dir, "link.yaml")))
	r, err := Run(t.Context(), options(t, dir))
	require.NoError(t, err)
	defer func() { require.NoError(t, r.Close()) }()
	first := map[string]string{}
	for x, err := range r.Rows() {
		require.NoError(t, err)
		first[x.Path] = x.First
	}
	require.Len(t, first, 3)
	require.Contains(t, first["huge.yaml"], "huge.yaml: is 1")
	require.True(t, strings.HasPrefix(first["huge.yaml"], "huge.yaml"))
	require.Equal(t, "link.yaml: is a link, and what it names is not there", first["link.yaml"])
	require.Contains(t, first["odd\uFFFD.yaml"], "letters")
	bad, tool := r.Bad()
	require.Equal(t, "2 0", fmt.Sprint(bad, " ", tool))
	w, err := r.watched()
	require.NoError(t, err)
	var news strings.Builder
	require.NoError(t, w.look(t.Context(), &news, "text"))
	require.Empty(t, news.String(), "nothing changed")
}

// TestChangedWhileRead: a sheet that is there again when it is asked what the matter was is no fault of the tool.
func TestChangedWhileRead(t *testing.T) {
	require.EqualError(t, relative(nil, "a.yaml"), "a.yaml: changed while it was read; look again")
}
