package check_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sheet"
)

// BenchmarkCheck is one whole verdict with everything warm.
func BenchmarkCheck(b *testing.B) {
	line, err := sheet.Read(linePath("butanone-day-tank"))
	require.NoError(b, err)
	e := engine(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := e.Check(context.Background(), line); err != nil {
			b.Fatal(err)
		}
	}
}
