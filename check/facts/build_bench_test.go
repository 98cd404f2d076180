package facts_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

const demo = "../../testdata/lines/butanone-day-tank/line.yaml"

// BenchmarkFacts is the physics and look-ups of one resolved line, without reading the sheet or judging.
func BenchmarkFacts(b *testing.B) {
	line, err := sheet.Read(demo)
	require.NoError(b, err)
	cat := catalog.Open()
	r, err := resolve.Resolve(line, cat, resolve.Options{AsOf: units.Date{Days: 20782}})
	require.NoError(b, err)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := facts.Build(r, cat); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkResolve is the joining of one sheet with a catalog that is warm.
func BenchmarkResolve(b *testing.B) {
	line, err := sheet.Read(demo)
	require.NoError(b, err)
	cat := catalog.Open()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := resolve.Resolve(line, cat, resolve.Options{AsOf: units.Date{Days: 20782}}); err != nil {
			b.Fatal(err)
		}
	}
}
