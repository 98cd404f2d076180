package report

import (
	"math"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestThePageIsWholeInItself(t *testing.T) {
	for name, v := range samples() {
		for _, e := range pageOf(t, v) {
			assert.NotContains(t, []string{"script", "img", "link", "iframe", "object", "form", "base"}, e.name, name)
			for key, value := range e.attrs {
				assert.False(t, strings.HasPrefix(key, "on") || key == "src", "%s: %s=%q", name, key, value)
				if key == "href" {
					assert.True(t, strings.HasPrefix(value, "#"), value)
				}
			}
		}
		assert.NotRegexp(t, `(?i)url\(|@import|https?:`, written(t, HTML, v, Options{}), name)
	}
}

// WCAG 2.1, success criteria 1.3.1, 2.4.6, 3.1.1 and 4.1.1 (recalled), as far as the markup alone can tell.
func TestThePageCanBeReadAloud(t *testing.T) {
	for name, v := range samples() {
		ids, level := map[string]bool{}, 0
		all := pageOf(t, v)
		count := map[string]int{}
		for _, e := range all {
			count[e.name]++
			if id := e.attrs["id"]; id != "" {
				assert.False(t, ids[id], "%s: id %q twice", name, id)
				ids[id] = true
			}
			if e.name == "th" {
				assert.NotEmpty(t, e.attrs["scope"], name)
			}
			if len(e.name) == 2 && e.name[0] == 'h' && e.name[1] >= '1' && e.name[1] <= '6' {
				now, _ := strconv.Atoi(e.name[1:])
				assert.LessOrEqual(t, now, level+1, "%s: heading %q leaves out a level", name, e.text)
				level = now
			}
			if e.name == "svg" {
				assert.True(t, e.attrs["aria-hidden"] == "true" || e.attrs["role"] == "img" && e.attrs["aria-labelledby"] != "", name)
			}
		}
		for _, e := range all {
			for _, id := range strings.Fields(e.attrs["aria-labelledby"] + " " + strings.TrimPrefix(e.attrs["href"], "#")) {
				assert.True(t, ids[id], "%s: nothing has the id %q", name, id)
			}
		}
		assert.Equal(t, "en", all[0].attrs["lang"])
		for _, one := range []string{"h1", "main", "header", "footer", "nav"} {
			assert.Equal(t, 1, count[one], name+one)
		}
	}
}

// Everything a sheet can say goes in as words: the page of a hostile verdict has the same elements as that of a tame one.
func TestHostileWordsDoNotBecomeMarkup(t *testing.T) {
	hostile := `</title></style></svg><script>alert(1)</script><img src=x onerror=alert(1)>"'` + "`javascript:alert(1)--><!--]]>"
	spoil := func(with string) []*element {
		v := unfitLine()
		v.Runs = append(v.Runs, Run{Name: "x", From: "y", To: "z", Carries: []string{"a"}, Parts: []Part{{ID: "p", Kind: "hose", Name: "n"}}})
		return pageOf(t, copyOf(v, func(s string) string {
			switch Word(s) {
			case Schema, Unfit, stop, condition, note, "":
				return s
			}
			return s + with
		}))
	}
	tame, wild := spoil(" tame"), spoil(hostile)
	breaks := 0
	for _, e := range wild {
		assert.NotContains(t, []string{"script", "img"}, e.name)
		assert.NotContains(t, e.attrs, "onerror")
		if e.name == "style" {
			assert.NotContains(t, e.text, "alert")
		}
		if e.name == "wbr" {
			breaks++
		}
	}
	for _, e := range tame {
		if e.name == "wbr" {
			breaks--
		}
	}
	assert.Positive(t, breaks, "its slashes may be broken at")
	less := func(all []*element) (names []string) {
		for _, e := range all {
			if e.name != "wbr" && e.name != "text" { // a longer name fills two lines of its box
				names = append(names, e.name)
			}
		}
		return names
	}
	assert.Equal(t, less(tame), less(wild))
}

// The contrast of two colours: WCAG 2.1, definitions of contrast ratio and relative luminance (recalled); 1.4.3 asks for 4.5.
func TestColoursAreReadable(t *testing.T) {
	css, err := os.ReadFile("html/style.css")
	require.NoError(t, err)
	colours := map[string]float64{}
	for _, m := range regexp.MustCompile(`--([a-z]+): #([0-9a-f]{6})`).FindAllStringSubmatch(string(css), -1) {
		n, _ := strconv.ParseUint(m[2], 16, 32)
		sum := 0.0
		for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
			c := float64(n>>(16-8*i)&255) / 255
			if c <= 0.03928 {
				c /= 12.92
			} else {
				c = math.Pow((c+0.055)/1.055, 2.4)
			}
			sum += weight * c
		}
		colours[m[1]] = sum
	}
	require.Len(t, colours, 10)
	for _, ink := range []string{"ink", "soft", "stop", "warn", "good", "open", "link"} {
		for _, ground := range []string{"paper", "tint"} {
			ratio := (colours[ground] + 0.05) / (colours[ink] + 0.05)
			assert.GreaterOrEqual(t, ratio, 4.5, ink+" on "+ground)
		}
	}
}

func TestThePageShowsWhatTheVerdictHolds(t *testing.T) {
	page := written(t, HTML, unfitLine(), Options{})
	for _, want := range []string{">UNFIT<", "Do not use this line.", "holds", "-16 bar", "28:9", "29 CFR 1910.111 (2015 annual edition)", digest("site"),
		"Fit a relief device", "screening aid", ">1.4<", "stop 1, stop 2", "note 4"} {
		assert.Contains(t, page, want)
	}
	assert.Contains(t, written(t, HTML, unprovenLine(), Options{}), "question Q3", "a fluid is not drawn")
	empty := written(t, HTML, &Verdict{Schema: Schema, Word: Unproven, Line: "KD-1", Reason: "Nothing is known."}, Options{})
	for _, want := range []string{"Not known for this line.", "does not say how the line is laid out", "Nothing was left open.", "None was worked out."} {
		assert.Contains(t, empty, want)
	}
}

func TestACaseThatIsNotKnownHasNoBar(t *testing.T) {
	v := fitLine()
	v.Cases[0].Pressure, v.Cases[0].KPa = "not known", 0
	v.Cases = append(v.Cases, Case{Pressure: "-0.5 bar(g)", KPa: -50}, Case{Pressure: "0.01 bar(g)", KPa: 1})
	table := caseTable(v)
	at := table.column("Pressure")
	var got []int
	for _, row := range table.Rows {
		got = append(got, row[at].Percent)
	}
	assert.Equal(t, []int{0, 100, 0, 1}, got)
	assert.False(t, table.Rows[0][at].Bar)
	assert.True(t, table.Rows[2][at].Bar)
}

func TestJudgedThingsAreToldByPart(t *testing.T) {
	drawn := []string{"H1", "V1"}
	assert.Equal(t, "3 things on H1, V1", onParts([]string{"H1 liner", "H1 cover", "V1"}, drawn))
	assert.Equal(t, "H1, product", onParts([]string{"H1", "product"}, drawn))
	assert.Equal(t, "", onParts(nil, drawn))
	v := unfitLine()
	v.Judged[0].Judged = []string{"H1 liner", "H1 cover"}
	assert.Contains(t, written(t, HTML, v, Options{}), "2 things on H1")
	assert.Contains(t, written(t, HTML, v, Options{Full: true}), "H1 liner, H1 cover")
}
