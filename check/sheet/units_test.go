package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lineworthy/check/units"
)

func refusal[T any](parse func(string) (T, error)) func(string) error {
	return func(s string) error {
		_, err := parse(s)
		return err
	}
}

// A quantity that cannot be read is told in the words of the units package, at the value's own place.
func TestQuantityFaults(t *testing.T) {
	for _, c := range []struct {
		key, typed string
		column     int
		refused    func(string) error
	}{
		{"size", "25", 15, refusal(units.ParseSize)},
		{"rated", "16 bar", 16, refusal(units.ParsePressure)},
		{"length", "3 yards", 17, refusal(units.ParseLength)},
		{"length", "-3 m", 17, refusal(units.ParseLength)},
		{"made", "03/2024", 15, refusal(units.ParseDate)},
		{"life", "3 weeks", 15, refusal(units.ParseMonths)},
		{"resistance", "20", 21, refusal(units.ParseResistance)},
		{"highest", "60", 18, refusal(parseTemperature)},
	} {
		problems := faults(t, broken(t, "size: DN 25\n", c.key+": "+c.typed+"\n"))
		require.Len(t, problems, 1)
		want := Problem{"t.yaml", 17, c.column, "runs.main.parts[0]." + c.key, c.refused(c.typed).Error(), ""}
		assert.Equal(t, want, problems[0])
	}
}

func TestMessageStaysOnItsLine(t *testing.T) {
	problems := faults(t, broken(t, "size: DN 25\n", "length: \"3\\nyards\\t\"\n"))
	assert.Equal(t, 1, strings.Count(problems.Error()+"\n", "\n"))
}
