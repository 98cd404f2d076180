package facts

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/catalog"
)

// A hose with an EN 14420-7 coupler goes on an A-A-59326 adapter as well: another standard is not another coupling.
func TestInterchange(t *testing.T) {
	cat := catalog.Open()
	for _, row := range []struct {
		a, c string
		want bool
	}{
		{"cam-groove-en-14420-7", "cam-groove-en-14420-7", true},
		{"cam-groove-en-14420-7", "cam-groove-aa-59326", true},
		{"cam-groove-aa-59326", "cam-groove-en-14420-7", true},
		{"cam-groove-en-14420-7", "tank-truck-en-14420-6", false},
		{"flange-en-1092-1", "flange-asme-b16-5", false},
		{"union-din-11851", "cam-groove-en-14420-7", false}, // not a known pair
	} {
		a, err := cat.Connection(row.a)
		require.NoError(t, err)
		c, err := cat.Connection(row.c)
		require.NoError(t, err)
		assert.Equal(t, row.want, interchange(a, c), "%s and %s", row.a, row.c)
	}
}
