package decide

import (
	"context"
	"math/rand/v2"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
)

// madeUp is how many lines of chance are judged both ways.
const madeUp = 2000

// TestGuardsChangeNothing: with guards, with a memory and with neither, the same is found. Each line is judged twice by the
// one with a memory, so that it both learns and recalls.
func TestGuardsChangeNothing(t *testing.T) {
	e, set := builtin(t)
	plain, past, words := e.Unguarded(), e.Remembering(), vocabularyOf(set)
	chance := rand.New(rand.NewPCG(3, 4))
	for range madeUp {
		f := facts.Any(chance.IntN, words)
		want, _, err := plain.found(context.Background(), f)
		require.NoError(t, err)
		for name, other := range map[string]*Engine{"guards": e, "memory": past, "memory again": past} {
			got, _, err := other.found(context.Background(), f)
			require.NoError(t, err)
			require.Equal(t, want, got, name)
		}
	}
}

// tries is how many lines are made up for one rule until it finds something.
const tries = 90000

// TestEveryGuardLetsItsRuleFind: lines made of the words and numbers of one rule put each guard to the test, until the rule
// has found something on some of them.
func TestEveryGuardLetsItsRuleFind(t *testing.T) {
	e, set := builtin(t)
	p, _, err := e.stock()
	require.NoError(t, err)
	for _, m := range set.Modules() {
		id, isRule := strings.CutSuffix(m.Path, "/rule.rego")
		if !isRule {
			continue
		}
		t.Run(id, func(t *testing.T) {
			t.Parallel()
			at, chance, found := e.rules[id].place, rand.New(rand.NewPCG(7, 11)), 0
			words, numbers := literals(m.Text)
			for n := 0; n < tries && (found == 0 || n < 200); n++ {
				f := facts.Any(chance.IntN, words)
				lively(reflect.ValueOf(f).Elem(), chance, numbers, []string{"", words[chance.IntN(len(words))]}[n%2])
				if n%8 < 6 {
					f.Line.Regimes = words // every law that the rule knows
				}
				for i := range f.Parts { // every hose is a part too
					f.Parts[i].ID = []string{"parts", "hoses"}[n/2%2] + f.Parts[i].ID[len("parts"):]
				}
				want, err := e.some(context.Background(), p, []ask{{rule: at}}, f)
				require.NoError(t, err)
				if asks := slices.DeleteFunc(e.asks(f), func(a ask) bool { return a.rule != at }); len(asks) > 0 {
					got, err := e.some(context.Background(), p, asks, f)
					require.NoError(t, err)
					require.Equal(t, want, got)
				} else {
					require.Empty(t, want, "the guard keeps the rule from finding this")
				}
				found += len(want)
			}
			assert.NotZero(t, found, "the rule never found anything, so nothing is shown of its guard")
		})
	}
}

var (
	literal    = regexp.MustCompile(`"[a-z_]+":|"([^"\\]*)"|\b\d+\b`) // a key of a report is none
	collection = regexp.MustCompile(`\binput\.([a-z]+)`)
)

// literals are the words and numbers in the text of a rule behind its METADATA, and ids that facts refer to each other by.
func literals(text string) (words []string, numbers []int64) {
	text = text[strings.Index(text, "\npackage "):]
	for _, m := range collection.FindAllStringSubmatch(text, -1) {
		if id := m[1] + " 0"; !slices.Contains(words, id) {
			words = append(words, id)
		}
	}
	for _, m := range literal.FindAllStringSubmatch(text, -1) {
		if n, err := strconv.ParseInt(m[0], 10, 64); err == nil {
			numbers = append(numbers, n)
		} else if m[1] != "" {
			words = append(words, m[1])
		}
	}
	return words, append(numbers, 1)
}

// lively puts half of all numbers near those that the rule compares with, and everything in one part.
func lively(v reflect.Value, chance *rand.Rand, numbers []int64, part string) {
	switch v.Kind() {
	case reflect.Slice:
		for i := range v.Len() {
			lively(v.Index(i), chance, numbers, part)
		}
	case reflect.Struct:
		if v.Type() == intType {
			if v.Field(1).Bool() && chance.IntN(2) == 0 {
				v.Field(0).SetInt(numbers[chance.IntN(len(numbers))] + int64(chance.IntN(3)) - 1)
			}
			return
		}
		for i := range v.NumField() {
			if v.Type().Field(i).Name == "Part" && v.Field(i).Kind() == reflect.String && part != "" {
				v.Field(i).SetString(part)
			}
			lively(v.Field(i), chance, numbers, part)
		}
	}
}

// TestGuardsSaveWork: if no rule were left out, the test above would show nothing.
func TestGuardsSaveWork(t *testing.T) {
	e, set := builtin(t)
	asks := e.asks(capacities())
	assert.Less(t, len(asks), len(set.Index())/4)
	for i, g := range e.guards {
		assert.NotNil(t, g, "%s has no guard: go test ./rules -update", e.order[i])
	}
}

// TestBriefIsTheDecision: the short form says what the long one does.
func TestBriefIsTheDecision(t *testing.T) {
	e, set := builtin(t)
	words := vocabularyOf(set)
	chance := rand.New(rand.NewPCG(5, 6))
	for range 200 {
		f := facts.Any(chance.IntN, words)
		d, err := e.Decide(context.Background(), f)
		require.NoError(t, err)
		b, err := e.Brief(context.Background(), f)
		require.NoError(t, err)
		assert.Equal(t, d.Findings, b.Findings)
		seen, want := map[[2]string]bool{}, []Missing(nil)
		for i, c := range d.Coverage {
			for _, m := range c.Unjudged {
				if key := [2]string{m.Subject, m.Fact}; set.Index()[i].Severity != "note" && !seen[key] {
					seen[key] = true
					want = append(want, m)
				}
			}
		}
		assert.Equal(t, want, b.Missing)
	}
}
