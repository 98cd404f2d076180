package register

import (
	"bytes"
	"context"
	"errors"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// looking is a register under watch that looks when the test says so, so that no test waits for a clock.
type looking struct {
	*watch
	t      *testing.T
	format string
	out    bytes.Buffer
}

func watching(t *testing.T, o Options, format string) *looking {
	w, err := run(t, o).watched()
	require.NoError(t, err)
	return &looking{watch: w, t: t, format: format}
}

// after looks once after each change, and gives all that was written.
func (l *looking) after(changes ...func()) string {
	for _, change := range changes {
		change()
		require.NoError(l.t, l.look(l.t.Context(), &l.out, l.format))
	}
	return l.out.String()
}

// counts are the verdicts of a fresh run over the folder as it is now.
func counts(t *testing.T, o Options) map[string]int {
	o.State = ""
	out := map[string]int{}
	for word, n := range run(t, o).words {
		if n > 0 {
			out[word] = n
		}
	}
	return out
}

func (l *looking) sameCounts(o Options) {
	for word, n := range l.words {
		if n == 0 {
			delete(l.words, word)
		}
	}
	assert.Equal(l.t, counts(l.t, o), l.words, "the exit code is that of the folder as it is")
}

func TestWatch(t *testing.T) {
	for _, kept := range []string{"", "state.jsonl"} {
		o := options(t, generated(t, 12))
		if kept != "" {
			o.State = filepath.Join(t.TempDir(), kept)
		}
		w := watching(t, o, "jsonl")
		at := filepath.Join(o.Dir, "unit-0")
		whole, err := os.ReadFile(filepath.Join(at, "0003.yaml"))
		require.NoError(t, err)
		text := w.after(
			func() {},
			func() { appendTo(t, o.Dir, "unit-0/0000.yaml", "# note\n") },
			func() { put(t, o.Dir, "unit-9/new.yaml", lineKey.ReplaceAllString(string(whole), "line: NEW-1")) },
			func() { require.NoError(t, os.Remove(filepath.Join(at, "0002.yaml"))) },
			func() { put(t, o.Dir, "unit-0/0003.yaml", broken) },
			func() { put(t, o.Dir, "unit-0/0003.yaml", string(whole)) },
			func() { require.NoError(t, os.RemoveAll(filepath.Join(o.Dir, "unit-9"))) },
		)
		var got []string
		for line := range strings.Lines(text) {
			_, rest, _ := strings.Cut(line, `"path":"`)
			path, _, _ := strings.Cut(rest, `"`)
			got = append(got, strings.Split(line, `"`)[3]+" "+path)
		}
		assert.Equal(t, []string{"verdicts unit-0/0000.yaml", "verdicts unit-9/new.yaml", "gone unit-0/0002.yaml",
			"verdicts unit-0/0003.yaml", "verdicts unit-0/0003.yaml", "gone unit-9/new.yaml"}, got)
		w.sameCounts(o)
		require.NoError(t, w.Close())
		if kept != "" {
			fresh := o
			fresh.State = ""
			want, _ := once(t, fresh)
			again, judged := once(t, o)
			assert.Equal(t, want, again, "the next run goes on from the watch")
			assert.LessOrEqual(t, judged, 1, "and judges only what a fault of the tool left")
		}
	}
}

func TestWatchForPeople(t *testing.T) {
	o := options(t, generated(t, 3))
	w := watching(t, o, "text")
	text := w.after(
		func() { put(t, o.Dir, "unit-0/0001.yaml", broken) },
		func() { require.NoError(t, os.Remove(filepath.Join(o.Dir, "unit-0", "0001.yaml"))) },
	)
	assert.Equal(t, 2, strings.Count(text, "\n"), text)
	assert.Contains(t, text, "NO VERDICT")
	assert.Contains(t, text, "unit-0/0001.yaml is no longer there")
}

// TestWatchReadsOnlyWhatChanged gives the sheets an old time: then the folder shows what is to be read, except for every
// so many looks, which find a copy that brought the time and length of the sheet before it.
func TestWatchReadsOnlyWhatChanged(t *testing.T) {
	o := options(t, generated(t, 4))
	old := time.Now().Add(-time.Hour)
	path := filepath.Join(o.Dir, "unit-0", "0001.yaml")
	appendTo(t, o.Dir, "unit-0/0001.yaml", "# a\n")
	require.NoError(t, os.Chtimes(path, old, old))
	w := watching(t, o, "jsonl")
	w.after(func() {})
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, []byte(strings.Replace(string(text), "# a\n", "# b\n", 1)), 0o644))
	require.NoError(t, os.Chtimes(path, old, old))
	w.after(func() {})
	early := w.out.Len()
	for range wholeEvery {
		w.after(func() {})
	}
	assert.Zero(t, early)
	assert.Equal(t, 1, strings.Count(w.out.String(), "\n"))
}

func TestWatchIsInterrupted(t *testing.T) {
	o := options(t, generated(t, 4))
	r := run(t, o)
	ctx, stop := context.WithCancel(t.Context())
	ticks, end := make(chan time.Time), make(chan error, 1)
	go func() { end <- r.Watch(ctx, ticks, full{}, "jsonl") }()
	ticks <- time.Time{}
	stop()
	require.NoError(t, <-end)
	assert.Equal(t, 4, r.Sheets())
}

// TestWatchIsInterruptedWhileJudging ends a look halfway: nothing is written, and the last verdicts stand.
func TestWatchIsInterruptedWhileJudging(t *testing.T) {
	o := options(t, generated(t, 4))
	ctx, stop := context.WithCancel(t.Context())
	asked := 0
	judge := o.Judge
	o.Workers, o.Judge = 1, func(c context.Context, l *sheet.Line) (*report.Verdict, error) {
		if asked++; asked > 4 {
			stop()
		}
		return judge(c, l)
	}
	r := run(t, o)
	was := maps.Clone(r.words)
	appendTo(t, o.Dir, "unit-0/0001.yaml", "# note\n")
	ticks := make(chan time.Time, 1)
	ticks <- time.Time{}
	require.NoError(t, r.Watch(ctx, ticks, full{}, "jsonl"))
	assert.Equal(t, 5, asked)
	assert.Equal(t, was, r.words)
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("full") }

// TestWatchDoesNotGoOnBlindly ends when the folder is gone or nobody gets the rows.
func TestWatchDoesNotGoOnBlindly(t *testing.T) {
	o := options(t, generated(t, 2))
	ticks := make(chan time.Time, 1)
	ticks <- time.Time{}
	r := run(t, o)
	put(t, o.Dir, "unit-0/0001.yaml", broken)
	require.ErrorContains(t, r.Watch(t.Context(), ticks, full{}, "jsonl"), "full")
	require.NoError(t, os.RemoveAll(o.Dir))
	ticks <- time.Time{}
	require.ErrorIs(t, r.Watch(t.Context(), ticks, full{}, "jsonl"), os.ErrNotExist)
}
