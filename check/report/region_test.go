package report

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func regionFixture() *Region {
	return &Region{
		Span: "From 0 °C (limit of H1) to 50 °C (limit of V1).", Complete: true,
		Upper:  []Spot{{27315, 1000}, {29315, 1000}, {29315, 800}, {32315, 500}},
		Breaks: []RegionBreak{{Temperature: "0 °C", Allowed: "10 bar(g)", Weakest: "H1"}, {Temperature: "50 °C", Allowed: "5 bar(g)", Weakest: "V1"}},
		Cases: []RegionCase{
			{Run: "liquid", Case: "duty", At: Spot{31315, 300}, Text: "3 bar(g) at 40 °C", Held: "yes"},
			{Run: "liquid", Case: "lock-up", At: Spot{31315, 310}, Text: "3.1 bar(g) at 40 °C", Held: "yes"},
			{Run: "liquid", Case: "<surge>", At: Spot{31315, 900}, Text: "9 bar(g) at 40 °C", Held: "no", Least: "V1", Spare: "-3 bar"},
			{Run: "gas", Case: "cylinder", At: Spot{31315, 20000}, Text: "200 bar(g) at 40 °C", Held: "yes"},
		},
	}
}

func regionPage(t *testing.T, r *Region) (string, *regionPlot) {
	v := unfitLine()
	v.Region = r
	var b bytes.Buffer
	require.NoError(t, HTML(&b, v, Options{}))
	return b.String(), newRegionPlot(v)
}

func TestRegionIsDrawn(t *testing.T) {
	page, p := regionPage(t, regionFixture())
	require.Len(t, p.Marks, 3, "two cases at one place share a mark")
	assert.Equal(t, "1, 2", p.Marks[0].Number)
	assert.Equal(t, "no", p.Marks[1].Held)
	assert.True(t, p.Marks[2].Off)
	assert.Equal(t, plotTop, p.Marks[2].Y, "what is off the scale stands at its top")
	at := func(c Spot) [2]int { return [2]int{p.x(c.CK), p.y(c.KPa)} }
	assert.Greater(t, at(Spot{31315, 300})[1], at(Spot{31315, 900})[1], "more pressure stands higher")
	assert.Less(t, p.Marks[1].Y, p.y(600), "a case that is not held stands above the limit")
	assert.Contains(t, page, "Case 3, &lt;surge&gt;, 9 bar(g) at 40 °C: NOT HELD.")
	assert.NotContains(t, page, "<surge>")
	assert.Contains(t, page, `<a href="#region">`)
	assert.NotContains(t, page, "can only be smaller")
}

func TestRegionThatIsNotWhole(t *testing.T) {
	r := regionFixture()
	r.Complete = false
	page, _ := regionPage(t, r)
	assert.Contains(t, page, "the region can only be smaller")

	page, p := regionPage(t, &Region{Empty: "no temperature suits every part"})
	assert.Contains(t, page, "There is no such region: no temperature suits every part.")
	assert.Empty(t, p.Marks)

	page, p = regionPage(t, nil)
	assert.Nil(t, p)
	assert.NotContains(t, page, `id="region"`)
}

// A verdict that carries a region comes back from its JSON as it was.
func TestRegionIsStored(t *testing.T) {
	v := unfitLine()
	v.Region = regionFixture()
	var b bytes.Buffer
	require.NoError(t, JSON(&b, v, Options{}))
	back, err := Read(b.Bytes())
	require.NoError(t, err)
	assert.Equal(t, v.Region.Upper, back.Region.Upper)
	assert.Equal(t, v.Region.Cases, back.Region.Cases)

	b.Reset()
	require.NoError(t, JSON(&b, v, Options{}))
	_, err = Read([]byte(strings.Replace(b.String(), `"held": "no"`, `"hold": "no"`, 1)))
	require.Error(t, err)
}
