//go:build unix

package facts_test

import (
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/facts"
)

// BenchmarkLines is the physics of each shipped line by processor time, that of the garbage collector counted: what the
// clock says depends on who else is at work.
func BenchmarkLines(b *testing.B) {
	cat := catalog.Open()
	for name, l := range shipped(b, cat) {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			from := processor()
			for range b.N {
				_, err := facts.Build(l, cat)
				require.NoError(b, err)
			}
			b.ReportMetric(float64(processor()-from)/float64(b.N), "cpu-ns/op")
		})
	}
}

// processor is the time in ns that the processor spent on this process.
func processor() int64 {
	var u syscall.Rusage
	_ = syscall.Getrusage(syscall.RUSAGE_SELF, &u)
	return u.Utime.Nano() + u.Stime.Nano()
}
