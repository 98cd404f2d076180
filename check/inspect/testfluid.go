package inspect

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
)

// mostGasKPa is up to where gas stands in for a liquid in a leak test: above, it stores too much energy (practice, no source).
const mostGasKPa = 1000

const (
	inertGas = "nitrogen or another dry inert gas; never air or oxygen"
	oilFree  = "nitrogen, dry and free of oil"
)

// inertGases are the words by which a recorded gas is taken as inert.
var inertGases = []string{"nitrogen", "n2", "argon", "helium", "inert"}

// choose says what the test of a run is made with (practice, no source). Fuel says that something on the line can burn.
func (t *LeakTest) choose(r *resolve.Run, fuel bool, kpa int64) {
	var flush, liquids []string
	harmless, air := true, false
	for _, f := range r.Fluids {
		h := &f.Cat.Hazards
		liquid := f.Cat.Form == "liquid"
		free := f.Cat.Form == "vapour" || f.Cat.ID == "air" // steam and air hold nothing that air could burn
		switch {
		case !liquid && !free && h.Oxidiser != nil && h.Oxidiser.Value:
			t.Fluid, t.inert, t.never = oilFree, true, true
			return
		case !liquid && (!free || fuel), resolve.Yes(h.Flammable) || resolve.Yes(h.Toxic):
			t.inert, t.never = true, true
		case liquid && f.Role == "flush":
			flush = append(flush, f.Cat.Name)
		case liquid:
			liquids = append(liquids, f.Cat.Name)
			harmless = harmless && !resolve.Yes(h.Corrosive) && !resolve.Yes(h.Oxidiser)
		}
		air = air || f.Cat.ID == "air"
	}
	t.Fluid = wetTest(flush, liquids, harmless)
	switch {
	case t.inert:
		t.Fluid = inertGas
	case t.Fluid == "" && air:
		t.Fluid = "air as it is used here, or nitrogen"
	case t.Fluid == "":
		t.Fluid = "nitrogen, or air free of oil"
	case kpa > mostGasKPa:
		t.wet = true
		t.Fluid += "; not with gas, which stores too much energy at this pressure (practice, no source)"
	default:
		t.Fluid += "; or nitrogen"
	}
}

// wetTest names the liquid, or none when the run carries none.
func wetTest(flush, liquids []string, harmless bool) string {
	const full = ", with all gas let out"
	switch {
	case len(flush) > 0:
		return flush[0] + ", the flush liquid of the sheet" + full
	case len(liquids) == 0:
		return ""
	case harmless && len(liquids) == 1:
		return liquids[0] + ", the product itself" + full
	}
	return "a liquid that the product bears, by its safety data sheet" + full
}

// with judges what the record says the test was made with.
func (f *Filled) with(t LeakTest, item, text string) error {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	has := func(any ...string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return slices.Contains(any, w) })
	}
	switch {
	case len(words) == 0 || slices.Contains(vague, strings.ToLower(text)) || has("none"):
		return fmt.Errorf("%q does not say what the test was made with: write its name, like nitrogen", text)
	case t.never && has("air", "oxygen", "o2"):
		why := "although the line carries what can burn"
		if !t.fuel {
			why = "although the list says never"
		}
		f.reject(item, "was made with "+text+" "+why, "Flush with an inert gas, and test again with it.", practice)
	case has(inertGases...):
		if t.wet {
			f.Open = append(f.Open, fmt.Sprintf("%s: was made with %s, a gas, and planned is %s", item, text, t.Fluid))
		}
	case t.inert:
		f.Open = append(f.Open, fmt.Sprintf("%s: was made with %s, and planned is %s", item, text, t.Fluid))
	default:
		f.wet(t, item, text)
	}
	return nil
}

// wet wants a fluid that hurts nobody where it leaks, unless the plan says that it may be any the product bears.
func (f *Filled) wet(t LeakTest, item, text string) {
	name, _, _ := strings.Cut(text, ",")
	row, err := f.list.cat.Fluid(strings.TrimSpace(name))
	switch {
	case err != nil:
		f.Open = append(f.Open, fmt.Sprintf("%s: was made with %s, which the catalog does not know: whether the line bears it and it hurts nobody is not shown", item, text))
	case harms(&row.Hazards, row.ID):
		f.reject(item, "was made with "+text+", which can hurt people where it leaks", "Let the pressure off, flush, and test again: "+t.Fluid+".", practice)
	case t.wet && row.Form != "liquid":
		f.Open = append(f.Open, fmt.Sprintf("%s: was made with %s, a gas, and planned is %s", item, text, t.Fluid))
	}
}

func harms(h *catalog.Hazards, id string) bool {
	burns := id != "air" && resolve.Yes(h.Oxidiser)
	return burns || resolve.Yes(h.Flammable) || resolve.Yes(h.Toxic) || resolve.Yes(h.Corrosive)
}
