package report

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// longRun has n parts on the pipe, and the given number of branches behind the first.
func longRun(parts, branches int) Run {
	r := Run{Name: "long", From: "drum", To: "tank"}
	for i := range parts {
		r.Parts = append(r.Parts, Part{ID: fmt.Sprintf("P%d", i+1), Kind: "pipe"})
		for b := 0; i == 0 && b < branches; b++ {
			r.Parts = append(r.Parts, Part{ID: fmt.Sprintf("B%d", b+1), Kind: "gauge", Branch: true})
		}
	}
	return r
}

func drawingOf(r Run) drawing {
	v := fitLine()
	v.Runs = []Run{r}
	return drawings(v, marksOf(v))[0]
}

func TestLongRunsGoOnInAnotherRow(t *testing.T) {
	for parts, rows := range map[int]int{0: 1, 4: 1, 5: 2, 10: 2, 11: 3, 60: 11} {
		d := drawingOf(longRun(parts, 0))
		require.Len(t, d.Strips, rows, parts)
		boxes := 0
		for i, s := range d.Strips {
			boxes += len(s.Boxes)
			assert.LessOrEqual(t, len(s.Boxes), 6)
			arrows := len(s.Boxes) - 1
			if i > 0 {
				arrows++ // from the row before
			}
			if i+1 < rows {
				arrows++ // to the next
			}
			assert.Len(t, s.Arrows, arrows)
			if rows > 1 {
				assert.Contains(t, s.Title, fmt.Sprintf("row %d of %d", i+1, rows))
			}
		}
		assert.Equal(t, parts+2, boxes, "no part is left out")
		assert.Len(t, d.Steps, parts+2)
	}
}

func TestBranchesStandAboveTheLine(t *testing.T) {
	for branches := range 9 {
		d := drawingOf(longRun(3, branches))
		var s strip
		boxes := map[string]box{}
		for _, s = range d.Strips {
			assert.Less(t, s.Height, 600, "higher than a page")
			for _, b := range s.Boxes {
				assert.GreaterOrEqual(t, b.Y, 0)
				assert.LessOrEqual(t, b.X+boxWide, stripWide)
				assert.LessOrEqual(t, b.Y+boxHigh, s.Height)
				boxes[b.Label[0].Text] = b
			}
		}
		require.Len(t, boxes, 5+branches)
		for b := 1; b <= branches; b++ {
			assert.Less(t, boxes[fmt.Sprintf("B%d", b)].Y+boxHigh, boxes["P1"].Y)
		}
	}
}

func TestBoxesNeverOverlap(t *testing.T) {
	v := unfitLine()
	for i := range 23 {
		f := overloaded("B1", i)
		f.Rule, f.Title = fmt.Sprintf("a/rule_%d", i), fmt.Sprint(i)
		v.Findings = append(v.Findings, f)
	}
	v.Runs = []Run{longRun(4, 7)}
	v.Governing.Part = "B1"
	for _, s := range drawings(v, marksOf(v))[0].Strips {
		type place struct{ x, y, wide, high int }
		var taken []place
		for _, b := range s.Boxes {
			taken = append(taken, place{b.X, b.Y, boxWide, boxHigh})
			for _, m := range b.Marks {
				taken = append(taken, place{m.X, m.Y, 26, 18})
			}
		}
		for i, a := range taken {
			assert.GreaterOrEqual(t, a.y, 0)
			assert.LessOrEqual(t, a.y+a.high, s.Height)
			for _, b := range taken[:i] {
				apart := a.x+a.wide <= b.x || b.x+b.wide <= a.x || a.y+a.high <= b.y || b.y+b.high <= a.y
				assert.True(t, apart, "%v and %v", a, b)
			}
		}
	}
}

func TestMarksStandOnTheirParts(t *testing.T) {
	v := unfitLine()
	all := drawings(v, marksOf(v))
	said := map[string]string{}
	for _, d := range all {
		for _, s := range d.Steps {
			said[s.Name] = s.Marks
		}
	}
	assert.Equal(t, "least to spare, stop 1, stop 2, note 4", said["H1"])
	assert.Equal(t, "stop 1, stop 2", said["H2"])
	assert.Equal(t, "stop 1", said["V12"], "V1 is another part")
	assert.Equal(t, "", said["PR1"])
	assert.Equal(t, []string{"condition 3"}, marksOf(v).beside(v))
	v.Findings = []Finding{{Rule: "a/b", Severity: stop, Subject: "H1.outlet to day-tank.fill"}, {Rule: "c/d", Severity: note, Subject: "liquid"}}
	all = drawings(v, marksOf(v))
	assert.Equal(t, "note 2", all[1].Marks)
	assert.Equal(t, "stop 1", all[1].Steps[5].Marks, "a joint concerns both sides")
}

func TestNamesFitTheirBoxes(t *testing.T) {
	for name, want := range map[string][]string{
		"H1": {"H1"}, "hypochlorite-tank": {"hypochlorite-", "tank"}, "cylinder, 200 bar(g)": {"cylinder, 200", "bar(g)"},
		"a-b": {"a-b"}, "": nil, "one two three four five six seven": {"one two three", "four five six…"},
		"abcdefghijklnopqrstuvxyz": {"abcdefghijklno…"}, "WWWWWWWWWWWW": {"WWWWWWW…"}, "WWWWWWWW": {"WWWWWWWW"},
	} {
		assert.Equal(t, want, labelLines(name), name)
	}
}

func TestEveryKindHasASymbolOrAPlainBox(t *testing.T) {
	assert.Equal(t, symbol("something"), symbol(""))
	for kind := range symbols {
		assert.NotEqual(t, symbol(""), symbol(kind))
	}
}
