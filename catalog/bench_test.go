package catalog

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// big is a fluid file of 60 rows.
func big() []byte {
	var text strings.Builder
	text.WriteString(fixture["fluids/butanone.yaml"][:strings.Index(fixture["fluids/butanone.yaml"], tableKey)])
	text.WriteString(tableKey + "\n  metals:\n")
	for i := range 60 {
		fmt.Fprintf(&text, "    - {m: M%d, rating: suitable, to_c: 40, effect: resists; see the note on impurities, source: doc-a, standing: recalled, sure: high}\n", i)
	}
	return []byte(text.String())
}

// BenchmarkDecode compares what a check needs of a fluid with decoding all of it.
func BenchmarkDecode(b *testing.B) {
	raw := big()
	b.Run("head and two materials", func(b *testing.B) {
		for b.Loop() {
			f := new(Fluid)
			require.NoError(b, decode("fluids/butanone.yaml", raw, f))
			_, err := f.Rows("M3", "M40")
			require.NoError(b, err)
		}
	})
	b.Run("all 60 rows", func(b *testing.B) {
		for b.Loop() {
			require.NoError(b, strict("fluids/butanone.yaml", raw, new(fluidFile)))
		}
	})
}

func BenchmarkDecodeBuiltIn(b *testing.B) {
	for _, kind := range Kinds {
		b.Run(kind, func(b *testing.B) {
			ids := Open().IDs(kind)
			for i := 0; b.Loop(); i++ {
				c := Open()
				_, err := map[string]func(string) (any, error){
					Fluids:      func(n string) (any, error) { return c.Fluid(n) },
					Materials:   func(n string) (any, error) { return c.Material(n) },
					Hoses:       func(n string) (any, error) { return c.Hose(n) },
					Connections: func(n string) (any, error) { return c.Connection(n) },
					Seals:       func(n string) (any, error) { return c.Seal(n) },
					Sources:     func(n string) (any, error) { return c.Source(n) },
				}[kind](ids[i%len(ids)])
				require.NoError(b, err)
			}
		})
	}
}

func BenchmarkID(b *testing.B) {
	c := Open()
	for b.Loop() {
		_, err := c.ID(Fluids, "UN 1193")
		require.NoError(b, err)
	}
}
