package units

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func size(t *testing.T, typed string) Size {
	t.Helper()
	s, err := ParseSize(typed)
	require.NoError(t, err, typed)
	return s
}

func TestSizes(t *testing.T) {
	for _, c := range []struct {
		typed string
		want  Size
	}{
		{"DN 25", Size{Text: "DN 25", DN: 25}}, {"dn25", Size{Text: "DN 25", DN: 25}}, {"DN 4000", Size{Text: "DN 4000", DN: 4000}},
		{"NPS 2", Size{Text: "NPS 2", NPS: "2"}}, {"nps 1-1/2", Size{Text: "NPS 1 1/2", NPS: "1 1/2"}},
		{"NPS 1.5", Size{Text: "NPS 1 1/2", NPS: "1 1/2"}}, {"NPS 3/4", Size{Text: "NPS 3/4", NPS: "3/4"}},
		{"-16", Size{Text: "-16", Dash: 16, Bore: 0.0254}}, {"dash 8", Size{Text: "-8", Dash: 8, Bore: 0.0127}}, {"-96", Size{Text: "-96", Dash: 96, Bore: 0.1524}},
		{"25 mm", Size{Text: "25 mm", Bore: 0.025}}, {"2.5 cm", Size{Text: "25 mm", Bore: 0.025}}, {"31.75 mm", Size{Text: "31.75 mm", Bore: 0.03175}},
		{"1 1/2 in", Size{Text: "1 1/2 in", Bore: 0.0381}}, {`1-1/2"`, Size{Text: "1 1/2 in", Bore: 0.0381}}, {"1.5 in", Size{Text: "1 1/2 in", Bore: 0.0381}},
		{`3/4"`, Size{Text: "3/4 in", Bore: 0.01905}}, {"2 in", Size{Text: "2 in", Bore: 0.0508}}, {"1 ft", Size{Text: "12 in", Bore: 0.3048}},
		{"0.3 in", Size{Text: "0.3 in", Bore: 0.00762}}, {"4 m", Size{Text: "4000 mm", Bore: 4}},
	} {
		got := size(t, c.typed)
		assert.InDelta(t, float64(c.want.Bore), float64(got.Bore), 1e-12, c.typed)
		got.Bore = c.want.Bore
		assert.Equal(t, c.want, got, c.typed)
		assert.Equal(t, got.Text, size(t, got.String()).Text, "the canonical text reads back")
	}
}

func TestSizeRefusals(t *testing.T) {
	for typed, want := range map[string]string{
		"25":       `"25" does not say which kind of size: write DN 25, NPS 25, 25 in or 25 mm`,
		"1 1/2":    "write DN 1 1/2, NPS 1 1/2, 1 1/2 in or 1 1/2 mm",
		"-100":     "does not say which kind of size: write DN 100",
		"DN 0":     "outside DN 1 to DN 4000",
		"DN 4001":  "outside DN 1 to DN 4000",
		"NPS 7":    "is not a known NPS (known: 1/8, 1/4",
		"NPS 2 in": "is not a known NPS",
		"NPS x":    "does not start with a number",
		"NPS 1/0":  "divides by zero",
		"-0":       "outside dash -1 to -96",
		"-97":      "outside dash -1 to -96",
		"0 mm":     "outside 0 to 4 m",
		"4.1 m":    "outside 0 to 4 m",
		"DN":       "is not a DN: write a whole number after it", "DN 6.3": "is not a DN", "NB 25": "not a size (write DN 25, NPS 1, -16, 25 mm or 1 in)",
		"25 nm": "did you mean mm?",
		"":      "not a size",
	} {
		_, err := ParseSize(typed)
		assert.ErrorContains(t, err, want, typed)
	}
}

// Pairs of ISO 6708:1995 and ASME B36.10M-2018; recalled.
func TestPipeSizePairs(t *testing.T) {
	for nps, dn := range map[string]int{"1/2": 15, "1": 25, "1 1/4": 32, "2": 50, "3": 80, "4": 100, "6": 150, "24": 600} {
		got, ok := DNOfNPS(nps)
		assert.True(t, ok)
		assert.Equal(t, dn, got)
		back, ok := NPSOfDN(dn)
		assert.True(t, ok)
		assert.Equal(t, nps, back)
	}
	_, ok := NPSOfDN(51)
	assert.False(t, ok)
	_, ok = DNOfNPS("7")
	assert.False(t, ok)
}

func TestSame(t *testing.T) {
	for _, c := range []struct {
		a, b        string
		same, known bool
	}{
		{"DN 25", "DN25", true, true}, {"DN 25", "DN 32", false, true},
		{"DN 50", "NPS 2", true, true}, {"NPS 2", "DN 65", false, true}, {"NPS 2", "NPS 2", true, true}, {"NPS 2", "NPS 3", false, true},
		{"DN 50", "2 in", false, false}, {"DN 50", "51 mm", false, false}, {"NPS 2", "2 in", false, false}, {"DN 25", "-16", false, false},
		{"DN 25", "50 mm", false, true}, {"DN 51", "NPS 2", false, true},
		{"1 in", "-16", true, true}, {"1 in", "25.4 mm", true, true}, {"1 in", "25 mm", false, false}, {"1/4 in", "6 mm", false, false},
		{"50 mm", "51 mm", false, true}, {"1 in", "1 1/4 in", false, true}, {"1 in", "32 mm", false, true}, {"19 mm", "-12", false, false},
	} {
		for _, pair := range [][2]string{{c.a, c.b}, {c.b, c.a}} {
			same, known := Same(size(t, pair[0]), size(t, pair[1]))
			assert.Equal(t, [2]bool{c.same, c.known}, [2]bool{same, known}, pair)
		}
	}
	same, known := Same(Size{}, Size{})
	assert.False(t, same || known)
}
