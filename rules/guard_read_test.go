package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// show prints a guard: bodies by /, loops by ;, signs by &.
func (g Guard) show() string {
	var bodies []string
	for _, b := range g.Bodies {
		var loops []string
		for _, l := range b {
			var signs []string
			for _, s := range l.Signs {
				signs = append(signs, s.show())
			}
			if len(signs) > 0 || l.Over != "line" {
				loops = append(loops, strings.TrimSpace(l.Over+" "+strings.Join(signs, " & ")))
			}
		}
		bodies = append(bodies, strings.Join(loops, "; "))
	}
	return strings.Join(bodies, " / ")
}

func (s Sign) show() string {
	var b strings.Builder
	for _, t := range s.Sum {
		b.WriteString(number(t.Times) + "*" + t.Fact + " ")
	}
	if len(s.Sum) > 0 {
		return b.String() + number(s.Plus) + " " + s.Is
	}
	return strings.TrimSpace(s.Is + " " + s.Fact + " " + strings.Join(s.Words, ","))
}

func number(n int64) string {
	text := ""
	if n < 0 {
		text, n = "-", -n
	}
	digits := ""
	for ok := true; ok; ok = n > 0 {
		digits, n = string(rune('0'+n%10))+digits, n/10
	}
	return text + digits
}

// TestGuardOf: what is understood becomes a sign, and what is not is left out.
func TestGuardOf(t *testing.T) {
	const loop = "some h in input.hoses\n"
	for name, tc := range map[string]struct{ body, rest, want string }{
		"fact":                  {loop + "h.carries_lpg", "", "hoses holds carries_lpg"},
		"not a fact":            {loop + "not h.readable", "", "hoses denied readable"},
		"false":                 {loop + "h.readable == false", "", "hoses false readable"},
		"true":                  {loop + "true == h.readable", "", "hoses holds readable"},
		"word":                  {loop + `h.medium == "gas"`, "", "hoses any medium gas"},
		"other word":            {loop + `h.medium != "gas"`, "", "hoses"},
		"one of words":          {loop + `h.medium in {"water", "gas"}`, "", "hoses any medium gas,water"},
		"none of words":         {loop + `not h.medium in {"water", "gas"}`, "", "hoses"},
		"word in a list":        {loop + `"leaking" in h.defects`, "", "hoses any defects leaking"},
		"word not in a list":    {loop + `not "leaking" in h.defects`, "", "hoses none defects leaking"},
		"some word of a list":   {loop + "some d in h.defects\nd == h.id", "", "hoses filled defects"},
		"list that has any":     {loop + "count(h.defects) > 0", "", "hoses filled defects"},
		"list that has two":     {loop + "count(h.defects) > 1", "", "hoses"},
		"regime":                {`"a" in input.line.regimes`, "", "line any regimes a"},
		"one of regimes":        {"some law in {\"a\", \"b\"}\nlaw in input.line.regimes", "", "line any regimes a,b"},
		"no regime":             {`not "a" in input.line.regimes`, "", "line none regimes a"},
		"none of regimes":       {"some law in {\"a\", \"b\"}\nnot law in input.line.regimes", "", ""},
		"number":                {loop + "h.age_days > 30", "", "hoses 1*age_days -30 >"},
		"two numbers":           {loop + "2 * (h.age_days + 1) <= 3 * h.life_days", "", "hoses 2*age_days -3*life_days 2 <="},
		"name of a number":      {loop + "h.age_days > _most", "_most := 30", "hoses 1*age_days -30 >"},
		"name of two numbers":   {loop + "h.age_days > _most", "_most := 30 if input.line.changed\n_most := 31 if not input.line.changed", "hoses holds age_days"},
		"name hidden":           {loop + "_most := h.life_days\nh.age_days > _most", "_most := 30", "hoses 1*age_days -1*life_days 0 >"},
		"name hidden by some":   {loop + "some _most in [1, 99]\nh.age_days > _most", "_most := 30", "hoses holds age_days"},
		"product of facts":      {loop + "h.age_days * h.life_days > 3", "", "hoses"},
		"huge factor":           {loop + "3000000 * h.age_days > 3", "", "hoses"},
		"two loops compared":    {loop + "some v in input.vessels\nh.rated_kpa < v.rated_kpa", "", "hoses; vessels"},
		"fraction":              {loop + "h.age_days > 0.5", "", "hoses holds age_days"},
		"unknown function":      {loop + "h.age_days > count(h.defects)", "", "hoses holds age_days"},
		"with":                  {loop + "h.carries_lpg with input as {}", "", "hoses"},
		"index and element":     {"some i, h in input.hoses\nh.carries_lpg\ni > 0", "", "hoses holds carries_lpg"},
		"pairs":                 {"some h in input.pairs.limited\nh.by_family", "", "pairs.limited holds by_family"},
		"groups of pairs":       {"some g in {\"limited\", \"suitable\"}\nsome h in input.pairs[g]\nh.by_family", "", "pairs.limited holds by_family / pairs.suitable holds by_family"},
		"condition by name":     {loop + "_old(h)", "_old(x) if x.age_days > 30\n_old(x) if x.kind == \"a\"", "hoses 1*age_days -30 > / hoses"},
		"not by name":           {loop + "not _old(h)", "_old(x) if x.age_days > 30", "hoses"},
		"name without argument": {loop + "_marine", `_marine if "a" in input.line.regimes`, "line any regimes a; hoses"},
		"name of a set":         {loop + "_marine", `_marine contains "a" if "a" in input.line.regimes`, "hoses"},
		"result as argument":    {loop + "_old(h, n)\nn > 3", "_old(x) := x.age_days if x.carries_lpg", "hoses"},
		"body for a word":       {loop + `_of(h, "a") > 30`, "_of(x, \"a\") := x.age_days\n_of(x, \"b\") := x.life_days", "hoses 1*age_days -30 >"},
		"bodies for words":      {loop + "some w in {\"a\", \"b\"}\n_of(h, w) > 30", "_of(x, \"a\") := x.age_days\n_of(x, \"b\") := x.life_days", "hoses 1*age_days -30 > / hoses 1*life_days -30 >"},
		"otherwise":             {loop + "h.age_days > _most(h)", "_most(x) := 9 if x.carries_lpg\nelse := 30", "hoses holds carries_lpg & 1*age_days -9 > / hoses 1*age_days -30 >"},
		"table":                 {loop + "h.age_days > _most[h.medium]", `_most := {"gas": 9, "water": 30}`, "hoses any medium gas & 1*age_days -9 > / hoses any medium water & 1*age_days -30 >"},
		"elements of a set":     {"some h in _wet\nh.age_days > 3", "_wet contains x if {\n\tsome x in input.hoses\n\tx.carries_lpg\n}", "hoses holds carries_lpg & 1*age_days -3 >"},
		"calls in a circle":     {loop + "_a(h)", "_a(x) if _b(x)\n_b(x) if _a(x)", "hoses"},
		"both sets filled":      {loop + "x := {d | some d in h.defects} & {\"a\"}\ncount(x) > 0", "", "hoses filled defects"},
		"least of a table":      {"x := min({d | d := _days[input.line.regimes[_]]})\n" + loop + "h.age_days > x", `_days := {"a": 9, "b": 30}`, "line any regimes a,b; hoses holds age_days"},
		"count of a table":      {"x := count({d | d := _days[input.line.regimes[_]]})\n" + loop + "h.age_days > x", `_days := {"a": 9, "b": 30}`, "hoses holds age_days"},
		"comprehension":         {"count({h.id | some h in input.hoses; h.carries_lpg}) > 0", "", "hoses holds carries_lpg"},
		"two of a kind":         {"count({h.id | some h in input.hoses; h.carries_lpg}) > 1", "", "hoses holds carries_lpg"},
		"at least one":          {"count({h.id | some h in input.hoses; h.carries_lpg}) >= 1", "", "hoses holds carries_lpg"},
		"any number":            {"count({h.id | some h in input.hoses; h.carries_lpg}) >= 0", "", ""},
		"fewer":                 {"count({h.id | some h in input.hoses; h.carries_lpg}) < 2", "", ""},
		"own names of a set":    {loop + "count({v.id | some v in input.vessels; v.id == h.id}) > 1", "", "hoses; vessels"},
		"unification":           {loop + "[h.age_days, 1] = [2, 1]", "", "hoses"},
	} {
		t.Run(name, func(t *testing.T) {
			text := "package rules.a.b\n\nreport contains {\"subject\": \"line\"} if {\n" + tc.body + "\n}\n\n" + tc.rest + "\n"
			m, err := parse(Module{"a/b/rule.rego", text}, false)
			require.NoError(t, err)
			assert.Equal(t, tc.want, guardOf(m).show())
		})
	}
}

// TestGuardOfHeads: a report says nothing where part of it is not known.
func TestGuardOfHeads(t *testing.T) {
	for head, want := range map[string]string{
		`{"subject": h.id}`:                        "hoses",
		`{"subject": h.id, "x": h.age_days}`:       "hoses holds age_days",
		`{"subject": h.id, "x": _names[h.medium]}`: "hoses any medium gas,water",
		`h.id`: "hoses",
	} {
		m, err := parse(Module{"a/b/rule.rego", "package rules.a.b\n\nreport contains " + head +
			" if some h in input.hoses\n\n_names := {\"gas\": \"Gas\", \"water\": \"Water\"}\n"}, false)
		require.NoError(t, err)
		assert.Equal(t, want, guardOf(m).show(), head)
	}
}

// TestNoGuardWhereNothingIsUnderstood: such a rule always runs, on all facts.
func TestNoGuardWhereNothingIsUnderstood(t *testing.T) {
	for name, tc := range map[string]struct {
		text  string
		reads []string
	}{
		"no set":       {"report := {1} if input.line.changed", []string{"line"}},
		"part of one":  {"report.x contains 1 if input.line.changed", []string{"line"}},
		"input whole":  {"report contains 1 if count(input) > 3", nil},
		"input by key": {"report contains 1 if {\n\tsome k in [\"hoses\"]\n\tcount(input[k]) > 3\n}", nil},
		"other rules":  {"report contains 1 if count(data.rules.a.c.report) > 0", nil},
		"import":       {"import input.hoses\n\nreport contains 1 if count(hoses) > 0", nil},
	} {
		t.Run(name, func(t *testing.T) {
			m, err := parse(Module{"a/b/rule.rego", "package rules.a.b\n\n" + tc.text + "\n"}, false)
			require.NoError(t, err)
			g := guardOf(m)
			assert.Equal(t, tc.reads, g.Reads)
			assert.Nil(t, g.Alone)
			assert.Empty(t, strings.TrimPrefix(g.show(), "line holds changed"))
		})
	}
}

// TestAloneOf: a rule judges alone only if the one element that it runs over, by its named facts, is all that it looks at.
func TestAloneOf(t *testing.T) {
	const head, loop = `{"subject": h.id}`, "some h in input.hoses\n"
	for name, tc := range map[string]struct {
		head, body, rest string
		facts            []string
	}{
		"facts":                {head, loop + "h.age_days > 3", "", []string{"age_days"}},
		"function":             {head, loop + "_old(h)", "_old(x) if x.age_days > 3", []string{"age_days"}},
		"function of function": {head, loop + "_a(h)", "_a(x) if _b(x)\n_b(y) if y.age_days > 3", []string{"age_days"}},
		"otherwise":            {head, loop + "_a(h) > 3", "_a(x) := x.age_days if x.readable\nelse := 5", []string{"age_days", "readable"}},
		"another loop":         {head, loop + "some v in input.vessels\nv.padded", "", nil},
		"another read":         {head, loop + "count(input.hoses) > 1", "", nil},
		"the whole element":    {head, loop + "count(h) > 1", "", nil},
		"element in a set":     {head, loop + "count({h}) > 0", "", nil},
		"keys of the element":  {head, loop + "some k, v in h\nv == 3", "", nil},
		"fact by a variable":   {head, loop + "some k in [\"age_days\"]\nh[k] > 3", "", nil},
		"other subject":        {`{"subject": "line"}`, loop + "h.age_days > 3", "", nil},
		"no object":            {"h.id", loop + "h.age_days > 3", "", nil},
		"other built-in":       {head, loop + "object.get(h, \"age_days\", 0) > 3", "", nil},
		"line whole":           {head, loop + "count(input.line) > 3", "", nil},
		"element redeclared":   {head, loop + "count([1 | some h in input.line.regimes; h == \"x\"]) > 0", "", nil},
	} {
		t.Run(name, func(t *testing.T) {
			m, err := parse(Module{"a/b/rule.rego", "package rules.a.b\n\nreport contains " + tc.head + " if {\n" + tc.body + "\n}\n\n" + tc.rest + "\n"}, false)
			require.NoError(t, err)
			a := guardOf(m).Alone
			if tc.facts == nil {
				assert.Nil(t, a)
				return
			}
			require.NotNil(t, a)
			assert.Equal(t, "hoses", a.Over)
			assert.Equal(t, tc.facts, a.Facts)
		})
	}
}

// TestNamesOf: a fact is a name if each report only repeats it, and nothing else reads it.
func TestNamesOf(t *testing.T) {
	const loop = "some h in input.hoses\n"
	for name, tc := range map[string]struct {
		head, body, rest string
		facts            []string
		names            map[string]string
	}{
		"twice":              {`{"subject": h.id, "part": h.id}`, loop + "h.age_days > 3", "", []string{"age_days"}, map[string]string{"subject": "id", "part": "id"}},
		"word":               {`{"subject": h.id, "of": h.run}`, loop + "h.age_days > 3", "", []string{"age_days"}, map[string]string{"subject": "id", "of": "run"}},
		"list":               {`{"subject": h.id, "of": concat(", ", h.defects)}`, loop + "h.age_days > 3", "", []string{"age_days"}, map[string]string{"subject": "id", "of": "defects"}},
		"list, other comma":  {`{"subject": h.id, "of": concat(",", h.defects)}`, loop + "h.age_days > 3", "", []string{"age_days", "defects"}, map[string]string{"subject": "id"}},
		"read elsewhere":     {`{"subject": h.id}`, loop + "startswith(h.id, \"X\")", "", []string{"id"}, nil},
		"read in a function": {`{"subject": h.id}`, loop + "_old(h)", "_old(x) if x.id == \"X\"", []string{"id"}, nil},
		"number":             {`{"subject": h.id, "have_days": h.age_days}`, loop + "h.carries_lpg", "", []string{"age_days", "carries_lpg"}, map[string]string{"subject": "id"}},
		"may be unknown":     {`{"subject": h.id, "of": h.class}`, loop + "h.age_days > 3", "", []string{"age_days", "class"}, map[string]string{"subject": "id"}},
		"part of a word":     {`{"subject": h.id, "of": concat(" ", ["hose", h.id])}`, loop + "h.age_days > 3", "", []string{"age_days", "id"}, nil},
		"not in every report": {
			`{"subject": h.id, "of": h.run}`, loop + "h.age_days > 3",
			"report contains {\"subject\": h.id} if {\n" + loop + "h.age_days < 0\n}", []string{"age_days", "run"}, map[string]string{"subject": "id"},
		},
	} {
		t.Run(name, func(t *testing.T) {
			m, err := parse(Module{"a/b/rule.rego", "package rules.a.b\n\nreport contains " + tc.head + " if {\n" + tc.body + "\n}\n\n" + tc.rest + "\n"}, false)
			require.NoError(t, err)
			a := guardOf(m).Alone
			require.NotNil(t, a)
			assert.Equal(t, tc.facts, a.Facts)
			assert.Equal(t, tc.names, a.Names)
		})
	}
}
