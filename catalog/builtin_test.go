package catalog

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The numbers are those of the CAS registry and of the UN Model Regulations, Dangerous Goods List; recalled.
func TestBuiltInNames(t *testing.T) {
	c := Open()
	for _, test := range []struct{ name, want string }{
		{"78-93-3", "butanone"},
		{"UN 1193", "butanone"},
		{"methyl ethyl ketone", "butanone"},
		{"64-17-5", "ethanol"},
		{"UN 1066", "nitrogen"},
		{"UN 1977", "liquid-nitrogen"}, // nitrogen, refrigerated liquid
	} {
		id, err := c.ID(Fluids, test.name)
		require.NoError(t, err, test.name)
		assert.Equal(t, test.want, id, test.name)
	}
}

// One substance in two states, and a number that stands for many substances: both need a person to choose.
func TestBuiltInNumbersOfSeveral(t *testing.T) {
	_, err := Open().ID(Fluids, "7727-37-9")
	assert.EqualError(t, err, `"7727-37-9" may mean liquid-nitrogen or nitrogen: write one of them`)
	_, err = Open().ID(Fluids, "UN 3161") // liquefied gas, flammable, n.o.s.
	assert.IsType(t, &NotFound{}, err)
}

// The last digit of a CAS number is the sum of the others, each times its place from the right, modulo ten
// (CAS, "Check Digit Verification of CAS Registry Numbers"; recalled).
func TestBuiltInCASNumbers(t *testing.T) {
	assert.True(t, casHolds("7732-18-5"), "water, the example of that page")
	assert.False(t, casHolds("7732-18-6"))
	c := Open()
	for _, id := range c.IDs(Fluids) {
		f, err := c.Fluid(id)
		require.NoError(t, err)
		if f.CAS == nil {
			continue
		}
		for _, cas := range separate(f.CAS.Value) {
			assert.True(t, casHolds(cas), "fluids/%s.yaml: CAS %s has a wrong check digit", id, cas)
		}
	}
}

func casHolds(cas string) bool {
	sum, place := 0, 0
	var last int
	for i := len(cas) - 1; i >= 0; i-- {
		if cas[i] < '0' || cas[i] > '9' {
			continue
		}
		if place == 0 {
			last = int(cas[i] - '0')
		}
		sum += place * int(cas[i]-'0')
		place++
	}
	return place > 4 && sum%10 == last
}

func TestBuiltInUNNumbers(t *testing.T) {
	c := Open()
	for _, id := range c.IDs(Fluids) {
		f, err := c.Fluid(id)
		require.NoError(t, err)
		for _, name := range numbers(f) {
			if key := normal(name); key[:2] == "un" {
				assert.Regexp(t, `^un-[0-3]\d{3}$`, key, "fluids/%s.yaml", id)
			}
		}
	}
}
