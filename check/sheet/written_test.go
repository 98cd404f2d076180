package sheet_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/sheet"
)

// TestValues: every value stands where it says it does, and none is left out.
func TestValues(t *testing.T) {
	data, err := os.ReadFile("../../testdata/lines/toluene-yard/line.yaml")
	require.NoError(t, err)
	l, err := sheet.Parse("line.yaml", data)
	require.NoError(t, err)
	lines, seen := strings.Split(string(data), "\n"), map[string]string{}
	for _, v := range l.Values() {
		assert.Contains(t, lines[v.Pos.Line-1], v.Text, v.Path)
		seen[v.Path] = v.Text
	}
	assert.Equal(t, "10 bar(g)", seen["runs.liquid.parts[1].rated"])
	assert.Equal(t, "FFKM", seen["runs.liquid.parts[0].outlet.seal.material"])
	assert.Equal(t, "nitrogen", seen["vessels.returnable.points.gas.marked"])
	assert.Equal(t, "pad", seen["runs.liquid.carries[1]"])
	assert.Equal(t, "60 °C", seen["evidence[0].highest"])
	leaves := 0
	for path := range l.Pos {
		if path == "" {
			continue
		}
		below := false
		for other := range l.Pos {
			below = below || other != path && (strings.HasPrefix(other, path+".") || strings.HasPrefix(other, path+"["))
		}
		if !below {
			leaves++
		}
	}
	assert.Len(t, seen, leaves)
}
