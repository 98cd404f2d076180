package decide

import (
	"context"
	"math/rand/v2"
	"testing"

	"lineworthy/check/facts"
	"lineworthy/rules"
)

// bad is made-up facts with much to find, always the same: a sick line costs more than a sound one.
func bad(set rules.Set) *facts.Facts {
	return facts.Any(rand.New(rand.NewPCG(1, 2)).IntN, vocabularyOf(set))
}

func BenchmarkDecide(b *testing.B) {
	e, set := builtin(b)
	for name, f := range map[string]*facts.Facts{"sick": bad(set), "small": capacities()} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := e.Decide(context.Background(), f); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkValue(b *testing.B) {
	_, set := builtin(b)
	f := bad(set)
	for b.Loop() {
		value(f)
	}
}

func BenchmarkCoverage(b *testing.B) {
	e, set := builtin(b)
	f := bad(set)
	for b.Loop() {
		e.coverage(f, nil)
	}
}

func BenchmarkNew(b *testing.B) {
	for b.Loop() {
		set, err := rules.Load()
		if err != nil {
			b.Fatal(err)
		}
		if _, err := New(context.Background(), set); err != nil {
			b.Fatal(err)
		}
	}
}
