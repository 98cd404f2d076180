package batch

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"runtime/debug"
	"slices"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"lineworthy/check/decide"
	"lineworthy/testdata/bench/oracle"
	"lineworthy/testdata/bench/population"
)

// took is what one way needs for all lines.
type took struct{ clock, processor time.Duration }

func measured(b *testing.B, judge func() error) took {
	from, start := processor(b), time.Now()
	require.NoError(b, judge())
	return took{time.Since(start), processor(b) - from}
}

func processor(b *testing.B) time.Duration {
	var u syscall.Rusage
	require.NoError(b, syscall.Getrusage(syscall.RUSAGE_SELF, &u))
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// way is one program that turns lines of facts into lines of findings.
type way struct {
	name  string
	judge func(facts []byte, w io.Writer, workers int) error
	took  []took
}

func waysToJudge() []*way {
	o := newOpinions()
	engine := func(fresh func() *decide.Engine) func([]byte, io.Writer, int) error {
		return func(facts []byte, w io.Writer, workers int) error {
			judge := Facts(fresh(), o.index)
			_, err := Run(context.Background(), Stream("x", bytes.NewReader(facts)), judge, w, Options{Workers: workers})
			return err
		}
	}
	return []*way{
		{name: "oracle", judge: func(facts []byte, w io.Writer, workers int) error { return oracle.Run("x", facts, w, workers) }},
		{name: "batch", judge: engine(o.engines["guarded"].Remembering)},
		{name: "guards-only", judge: engine(func() *decide.Engine { return o.engines["guarded"] })},
	}
}

// BenchmarkAgainstOracle puts the same lines, in memory, to the oracle and to the engine in turn, so that what else the
// machine does hits all alike, and tells the medians for one line: by the clock (us), and of the processor (cpu-us). The
// answers are compared first. The memory of a batch starts empty in every round, and the collector runs as rarely as in the
// command.
func BenchmarkAgainstOracle(b *testing.B) {
	defer debug.SetGCPercent(debug.SetGCPercent(400))
	for _, plant := range []string{population.Healthy, population.Mixed, population.Sick} {
		texts := made(b, plant, true)
		all := append(bytes.Join(texts, []byte("\n")), '\n')
		for _, workers := range []int{1, 2} {
			b.Run(fmt.Sprintf("%s/workers=%d", plant, workers), func(b *testing.B) {
				ways := waysToJudge()
				sameAnswers(b, ways, all)
				for b.Loop() {
					for _, w := range ways {
						w.took = append(w.took, measured(b, func() error { return w.judge(all, io.Discard, workers) }))
					}
				}
				tell(b, ways, len(texts))
			})
		}
	}
}

// sameAnswers also compiles what the lines need.
func sameAnswers(b *testing.B, ways []*way, all []byte) {
	var want bytes.Buffer
	for i, w := range ways {
		var got bytes.Buffer
		require.NoError(b, w.judge(all, &got, 1))
		if i == 0 {
			want = got
		}
		require.True(b, bytes.Equal(want.Bytes(), got.Bytes()), w.name)
	}
}

func tell(b *testing.B, ways []*way, lines int) {
	var first took
	for i, w := range ways {
		t := took{median(w.took, func(t took) time.Duration { return t.clock }), median(w.took, func(t took) time.Duration { return t.processor })}
		if i == 0 {
			first = t
		}
		b.ReportMetric(micro(t.clock, lines), w.name+"-us/line")
		b.ReportMetric(micro(t.processor, lines), w.name+"-cpu-us/line")
		if i > 0 {
			b.ReportMetric(float64(t.clock)/float64(first.clock), w.name+"/oracle")
			b.ReportMetric(float64(t.processor)/float64(first.processor), w.name+"/oracle-cpu")
		}
	}
	b.ReportMetric(0, "ns/op")
}

func median(all []took, of func(took) time.Duration) time.Duration {
	var out []time.Duration
	for _, t := range all {
		out = append(out, of(t))
	}
	slices.Sort(out)
	return out[len(out)/2]
}

func micro(d time.Duration, lines int) float64 {
	return float64(d.Nanoseconds()) / 1e3 / float64(lines)
}

// BenchmarkOracleDeciding is what is left of the oracle without the decoder.
func BenchmarkOracleDeciding(b *testing.B) {
	for _, plant := range []string{population.Healthy, population.Mixed, population.Sick} {
		var lines []*oracle.Facts
		for _, text := range made(b, plant, true) {
			f, err := oracle.Read(text)
			require.NoError(b, err)
			lines = append(lines, f)
		}
		b.Run(plant, func(b *testing.B) {
			b.ReportAllocs()
			var out []byte
			from := processor(b)
			for i := 0; b.Loop(); i++ {
				out = lines[i%len(lines)].Decide(out[:0], "x")
			}
			b.ReportMetric(micro(processor(b)-from, b.N), "cpu-us/line")
		})
	}
}
