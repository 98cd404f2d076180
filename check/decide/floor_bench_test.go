//go:build unix

package decide

import (
	"context"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// faultless are the shipped lines that nothing is found on once their values are confirmed, and the facts of each.
func faultless(b *testing.B, e *Engine) []*facts.Facts {
	files, err := filepath.Glob("../../testdata/lines/*/line.yaml")
	require.NoError(b, err)
	cat, out := catalog.Open(), []*facts.Facts{}
	for _, file := range files {
		s, err := sheet.Read(file)
		require.NoError(b, err)
		l, err := resolve.Resolve(s, cat, resolve.Options{AsOf: units.Date{Days: 20782}})
		require.NoError(b, err)
		f, err := facts.Build(l, cat)
		require.NoError(b, err)
		for i := range f.Values {
			f.Values[i].Standing = "site"
		}
		found, _, err := e.found(context.Background(), f)
		require.NoError(b, err)
		if len(found) == 0 {
			out = append(out, f)
		}
	}
	require.NotEmpty(b, out)
	return out
}

// ruleless is an engine that is asked what a stock engine is asked, and has no rules.
func ruleless(b *testing.B) *Engine {
	m, err := ast.ParseModuleWithOpts("verdict", "package verdict\n\nfindings := {}\n", ast.ParserOptions{RegoVersion: ast.RegoV1})
	require.NoError(b, err)
	c := ast.NewCompiler()
	c.Compile(map[string]*ast.Module{"verdict": m})
	require.False(b, c.Failed())
	return newEngine(func([]string) (*ast.Compiler, error) { return c, nil }).Unguarded()
}

// BenchmarkFloor holds a line on which nothing is found against the empty rule set on the same facts: with the guards as
// shipped, without them, with a memory as in a batch, and the empty policy with its input made beforehand. The variants take
// turns in blocks, so that a busy machine is busy for all. It reports processor time and allocations a line, and ratios.
func BenchmarkFloor(b *testing.B) {
	e, _ := builtin(b)
	lines, none := faultless(b, e), ruleless(b)
	inputs := make([]ast.Value, len(lines))
	for i, f := range lines {
		inputs[i] = value(f)
	}
	p, query, err := none.stock()
	require.NoError(b, err)
	engine := func(e *Engine) func(int) error {
		return func(i int) error { _, _, err := e.found(context.Background(), lines[i]); return err }
	}
	variants := []variant{
		{name: "empty", judge: engine(none)}, {name: "guards", judge: engine(e)}, {name: "memory", judge: engine(e.Remembering())},
		{name: "unguarded", judge: engine(e.Unguarded())},
		{name: "prebuilt", judge: func(i int) error { _, err := p.eval(context.Background(), query, inputs[i]); return err }},
	}
	for i := range variants {
		variants[i].block(b, len(lines)) // compiles, and fills the memory
		variants[i].cpu, variants[i].lines, variants[i].allocs = 0, 0, 0
	}
	for b.Loop() {
		for i := range variants {
			variants[i].block(b, len(lines))
		}
	}
	b.ReportMetric(float64(len(lines)), "lines")
	floor, bare := variants[0].perLine(), variants[4].perLine()
	for _, v := range variants {
		b.ReportMetric(v.perLine(), "us-"+v.name)
		b.ReportMetric(float64(v.allocs)/float64(v.lines), "allocs-"+v.name)
		b.ReportMetric(v.perLine()/floor, "x-empty-"+v.name)
		b.ReportMetric(v.perLine()/bare, "x-prebuilt-"+v.name)
	}
}

// variant is one way to judge a line, with what it has taken so far.
type variant struct {
	name          string
	judge         func(line int) error
	cpu           time.Duration
	lines, allocs int
}

// rounds make a block long enough for the clock of the processor.
const rounds = 20

func (v *variant) block(b *testing.B, lines int) {
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	from := processor()
	for range rounds {
		for i := range lines {
			if err := v.judge(i); err != nil {
				b.Fatal(err)
			}
		}
	}
	v.cpu += processor() - from
	runtime.ReadMemStats(&after)
	v.lines += rounds * lines
	v.allocs += int(after.Mallocs - before.Mallocs)
}

func (v *variant) perLine() float64 { return float64(v.cpu.Nanoseconds()) / 1e3 / float64(v.lines) }

// processor is the time this process has had on all cores.
func processor() time.Duration {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		return 0
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}
