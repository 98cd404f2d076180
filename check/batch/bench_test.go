package batch

import (
	"context"
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/decide"
	"lineworthy/rules"
	"lineworthy/testdata/bench/population"
)

// made are lines of one kind of plant.
func made(b *testing.B, kind string, tags bool) [][]byte {
	b.Helper()
	m, err := population.New("../../testdata/lines", kind, tags, 8)
	require.NoError(b, err)
	out := make([][]byte, 500)
	for i := range out {
		out[i], err = m.Next()
		require.NoError(b, err)
	}
	return out
}

// engines are the ways to judge that find the same.
func engines(e *decide.Engine) map[string]func() *decide.Engine {
	return map[string]func() *decide.Engine{
		"recalling": e.Remembering,
		"guarded":   func() *decide.Engine { return e },
		"unguarded": e.Unguarded,
	}
}

// BenchmarkFacts is one line, facts as JSON in and findings as JSON out, by one worker.
func BenchmarkFacts(b *testing.B) {
	e, set := judges(b)
	for plant, texts := range map[string][][]byte{
		"healthy": made(b, population.Healthy, true), "mixed": made(b, population.Mixed, true), "sick": made(b, population.Sick, true),
		"mixed, parts numbered in each line": made(b, population.Mixed, false),
	} {
		for way, engine := range engines(e) {
			b.Run(plant+"/"+way, func(b *testing.B) { run(b, Facts(engine(), set.Index()), texts) })
		}
		b.Run(plant+"/reading alone", func(b *testing.B) { run(b, readOnly, texts) })
	}
}

// readOnly is the floor: nothing is judged.
func readOnly() Judge {
	r := newReader(false)
	return func(_ context.Context, i Item) Answer {
		_, err := r.read(i.Text)
		return Answer{Word: "fit", Err: err}
	}
}

func run(b *testing.B, judge func() Judge, texts [][]byte) {
	b.ReportAllocs()
	source := func(yield func(Item) bool) {
		for i := range b.N {
			if !yield(Item{Name: "x", Text: texts[i%len(texts)]}) {
				return
			}
		}
	}
	b.ResetTimer()
	sum, err := Run(context.Background(), source, judge, io.Discard, Options{Workers: 1})
	require.NoError(b, err)
	require.Zero(b, sum.Broken)
}

// BenchmarkCompile is what the first lines of a batch wait for.
func BenchmarkCompile(b *testing.B) {
	for b.Loop() {
		set, err := rules.Load()
		require.NoError(b, err)
		_, err = set.Compiler()
		require.NoError(b, err)
	}
}
