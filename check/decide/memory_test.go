package decide

import (
	"context"
	"fmt"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/facts"
)

// TestMemoryKnowsWhatItMet: equal parts of other lines are not judged again, and a single other fact makes a part another.
func TestMemoryKnowsWhatItMet(t *testing.T) {
	e, _ := builtin(t)
	past := e.Remembering()
	f := capacities()
	_, open := past.recall(past.asks(f), f)
	require.NotEmpty(t, open)
	_, err := past.Decide(context.Background(), f)
	require.NoError(t, err)
	f.Line.ID, f.Capacities[0].ID, f.Capacities[1].ID = "another line", "another part", "one more"
	known, open := past.recall(past.asks(f), f)
	assert.Empty(t, open)
	assert.Len(t, known, 1)
	for i := range f.Capacities {
		f.Capacities[i].TempCK = facts.Know(30000) // no rule that may find something here reads it
	}
	_, open = past.recall(past.asks(f), f)
	assert.Empty(t, open)
	f.Capacities[1].DemandKPa.V++
	_, open = past.recall(past.asks(f), f)
	require.Len(t, open, 1)
	assert.Equal(t, []int{1}, open[0].elements)
}

// TestMemoryIsBounded: what is put in first is forgotten first, unless it is met again.
func TestMemoryIsBounded(t *testing.T) {
	m := &memory{young: map[string][]Finding{}}
	found := []Finding{{Rule: "a/b", Subject: "H1", Words: map[string]string{"what": strings.Repeat("x", 1000)}}}
	m.put("often", found)
	for i := range 100_000 {
		m.put(fmt.Sprint(i), found)
		_, ok := m.get([]byte("often"))
		require.True(t, ok)
	}
	size := len(m.young) + len(m.old)
	assert.Less(t, size, 2*mostBytes/1000)
	assert.Greater(t, size, mostBytes/3000)
	_, ok := m.get([]byte("0"))
	assert.False(t, ok)
	_, ok = m.get([]byte("99999"))
	assert.True(t, ok)
}

// TestMemoryLooksNoMore: where no two parts have the same numbers the search is given up, and the findings stay the same.
func TestMemoryLooksNoMore(t *testing.T) {
	e, _ := builtin(t)
	past := e.Remembering()
	f := capacities()
	rule := e.rules["pressure/rating_below_demand"].place
	for range fewAsked + 10 {
		f.Capacities[1].DemandKPa.V++
		want, err := e.Decide(context.Background(), f)
		require.NoError(t, err)
		got, err := past.Decide(context.Background(), f)
		require.NoError(t, err)
		require.Equal(t, want, got)
	}
	assert.True(t, past.past.useless(rule))
	assert.LessOrEqual(t, past.past.asked[rule], fewAsked+1)
}

// TestDoubledIDs: where two elements have one id nobody can tell whose a finding is, so nothing is remembered of them.
func TestDoubledIDs(t *testing.T) {
	e, _ := builtin(t)
	past := e.Remembering()
	f := capacities()
	f.Capacities[0] = f.Capacities[1]
	f.Capacities[0].DemandKPa.V++
	for range 2 {
		want, err := e.Decide(context.Background(), f)
		require.NoError(t, err)
		got, err := past.Decide(context.Background(), f)
		require.NoError(t, err)
		require.Equal(t, want, got)
	}
	assert.Empty(t, past.past.young)
}

// TestKeysDiffer: two sets of facts never have one key, whatever their words hold.
func TestKeysDiffer(t *testing.T) {
	e, set := builtin(t)
	chance := rand.New(rand.NewPCG(1, 1))
	words := append(vocabularyOf(set), "", "\x00", "\x01", "\x01a")
	met := map[string]string{}
	for range 300 {
		f := facts.Any(chance.IntN, words)
		for _, a := range e.asks(f) {
			g := e.guards[a.rule]
			for _, place := range a.elements {
				v := g.alone.list(reflect.ValueOf(f).Elem()).Index(place)
				var plain []string
				for _, i := range g.alone.keys {
					plain = append(plain, fmt.Sprintf("%#v", v.Field(i).Interface()))
				}
				for _, i := range g.alone.line {
					plain = append(plain, fmt.Sprintf("%#v", reflect.ValueOf(f).Elem().Field(lineField).Field(i).Interface()))
				}
				key, want := string(g.alone.key(nil, a.rule, reflect.ValueOf(f).Elem(), place)), e.order[a.rule]+strings.Join(plain, "|")
				if old, ok := met[key]; ok {
					require.Equal(t, old, want)
				}
				met[key] = want
			}
		}
	}
	assert.Greater(t, len(met), 1000)
}
