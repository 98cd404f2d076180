package batch

import (
	"bytes"
	"context"
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/decide"
	"lineworthy/testdata/bench/population"
)

// TestPlantsAgree: on lines that share much of what they are made of, with parts named anew in each or alike in all, the
// same is found with a memory, without one and without guards, and by the order in which lines come.
func TestPlantsAgree(t *testing.T) {
	e, set := judges(t)
	for _, kind := range []string{population.Healthy, population.Mixed, population.Sick} {
		for _, tags := range []bool{false, true} {
			t.Run(fmt.Sprint(kind, " ", tags), func(t *testing.T) {
				m, err := population.New("../../testdata/lines", kind, tags, 5)
				require.NoError(t, err)
				var texts [][]byte
				for range 120 {
					text, err := m.Next()
					require.NoError(t, err)
					texts = append(texts, text)
				}
				answers := func(e *decide.Engine) string {
					var out bytes.Buffer
					source := func(yield func(Item) bool) {
						for i, text := range texts {
							if !yield(Item{Name: fmt.Sprint(i), Text: text}) {
								return
							}
						}
					}
					sum, err := Run(context.Background(), source, Facts(e, set.Index()), &out, Options{Workers: 2})
					require.NoError(t, err)
					require.Zero(t, sum.Broken)
					return out.String()
				}
				want := answers(e.Unguarded())
				assert.Equal(t, want, answers(e), "guards")
				past := e.Remembering()
				assert.Equal(t, want, answers(past), "learning")
				assert.Equal(t, want, answers(past), "recalling")
			})
		}
	}
}
