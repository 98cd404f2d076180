package batch

import (
	"bytes"
	"context"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/decide"
	"lineworthy/check/facts"
	"lineworthy/rules"
	"lineworthy/testdata/bench/oracle"
	"lineworthy/testdata/bench/population"
)

// opinions are the engine in all its ways, to be compared with the oracle.
type opinions struct {
	engines map[string]*decide.Engine
	index   []rules.Rule
	modules []rules.Module
}

var newOpinions = sync.OnceValue(func() opinions {
	set, err := rules.Load()
	if err != nil {
		panic(err) // other tests tell of it
	}
	e, err := decide.New(context.Background(), set)
	if err != nil {
		panic(err)
	}
	return opinions{map[string]*decide.Engine{"guarded": e, "recalling": e.Remembering(), "unguarded": e.Unguarded()}, set.Index(), set.Modules()}
})

// agree wants the same answers to all lines, byte for byte, from the oracle and from the engine in these ways.
func (o opinions) agree(t testing.TB, texts [][]byte, ways ...string) {
	t.Helper()
	all := append(bytes.Join(texts, []byte("\n")), '\n')
	var want bytes.Buffer
	require.NoError(t, oracle.Run("x", all, &want, 2))
	for _, way := range ways {
		var got bytes.Buffer
		_, err := Run(context.Background(), Stream("x", bytes.NewReader(all)), Facts(o.engines[way], o.index), &got, Options{Workers: 1})
		require.NoError(t, err)
		if bytes.Equal(want.Bytes(), got.Bytes()) {
			continue
		}
		ours, theirs := strings.Split(got.String(), "\n"), strings.Split(want.String(), "\n")
		for i := range theirs {
			require.Equal(t, only(theirs[i], ours[i]), only(ours[i], theirs[i]), "%s, otherwise equal or in another order\n%s", way, texts[i])
			require.Equal(t, theirs[i], ours[i], way)
		}
	}
}

// only are the findings and what else one answer has and the other has not.
func only(a, b string) []string {
	return slices.DeleteFunc(strings.Split(a, "},{"), func(piece string) bool { return strings.Contains(b, piece) })
}

// TestOracleKnowsEveryRule: a rule without its second statement is compared with nothing.
func TestOracleKnowsEveryRule(t *testing.T) {
	_, set := judges(t)
	assert.Equal(t, severities(set.Index()), oracle.Severities())
}

// TestOracleOnLines: the shipped lines and made-up plants, as they are and with their facts moved about.
func TestOracleOnLines(t *testing.T) {
	o, chance := newOpinions(), rand.New(rand.NewPCG(21, 22))
	var lines [][]byte
	shipped := shipped(t)
	for _, name := range sorted(nil, shipped) {
		lines = append(lines, text(t, shipped[name]))
	}
	for _, kind := range []string{population.Healthy, population.Mixed, population.Sick} {
		m, err := population.New("../../testdata/lines", kind, kind == population.Sick, 23)
		require.NoError(t, err)
		for range 100 {
			next, err := m.Next()
			require.NoError(t, err)
			lines = append(lines, next)
		}
	}
	o.agree(t, lines, "guarded", "recalling")
	o.agree(t, lines[:len(shipped)+10], "unguarded")
	var moved [][]byte
	for range 200 {
		f, err := facts.Read(lines[chance.IntN(len(lines))])
		require.NoError(t, err)
		m := mover{chance, lawsOf(o.index)}
		m.move(reflect.ValueOf(f).Elem())
		m.laws(f)
		moved = append(moved, text(t, f))
	}
	o.agree(t, moved, "guarded", "recalling")
}

// TestOracleOnChance: documents of chance that no line would give.
func TestOracleOnChance(t *testing.T) {
	o, chance := newOpinions(), rand.New(rand.NewPCG(24, 25))
	words := append(lawsOf(o.index), "hoses 0", "hoses 1", "parts 0", "joints 0", "x", "NO", "<&>", "é\u2028", "\"")
	var lines [][]byte
	for range 600 {
		lines = append(lines, text(t, facts.Any(chance.IntN, words)))
	}
	o.agree(t, lines, "guarded", "recalling")
	o.agree(t, lines[:100], "unguarded")
}

// TestOracleAgreesOnEveryRule puts each rule to the test with its own words and numbers, and those next to them, until
// it has found something on some of the lines.
func TestOracleAgreesOnEveryRule(t *testing.T) {
	o := newOpinions()
	for _, m := range o.modules {
		id, isRule := strings.CutSuffix(m.Path, "/rule.rego")
		if !isRule {
			continue
		}
		t.Run(id, func(t *testing.T) {
			t.Parallel()
			lines, found := linesOf(t, newSetter(m.Text), []byte(`"rule":"`+id+`"`))
			require.NotZero(t, found, "nothing is shown of this rule")
			o.agree(t, lines, "guarded")
		})
	}
}

// linesOf are the first lines of chance, and all on which the rule finds something, until there are enough of those or
// they are too rare.
func linesOf(t testing.TB, s *setter, mark []byte) (lines [][]byte, found int) {
	for tries := 0; tries < 20000 && (found == 0 || found < 12 && tries < 400 || tries < 12); tries++ {
		line := text(t, s.line())
		f, err := oracle.Read(line)
		require.NoError(t, err)
		if bytes.Contains(f.Decide(nil, "x"), mark) {
			lines, found = append(lines, line), found+1
		} else if tries < 12 {
			lines = append(lines, line)
		}
	}
	return lines, found
}

// lawsOf are the regimes and words that the scopes of the rules ask for.
func lawsOf(index []rules.Rule) []string {
	var out []string
	for _, r := range index {
		for _, c := range r.Scope {
			if _, list, ok := strings.Cut(c, "="); ok {
				out = append(out, strings.Split(list, "|")...)
			}
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}
