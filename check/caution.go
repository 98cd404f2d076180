package check

import (
	"fmt"
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/report"
	"lineworthy/check/resolve"
)

// cautions are the standing ones, then the hazards of the fluids at hand from the catalog.
func cautions(l *resolve.Line) []string {
	out := slices.Clone(report.StandingCautions())
	seen := map[string]bool{}
	for _, r := range l.Runs {
		for _, f := range r.Fluids {
			if seen[f.Cat.ID] {
				continue
			}
			seen[f.Cat.ID] = true
			out = append(out, hazard(f))
		}
	}
	return out
}

// scaldingC is where a splash burns at once. Practice, no source.
const scaldingC = 60

// hazard is one sentence about one fluid; a hazard that is not known is said to be so.
func hazard(fluid *resolve.Fluid) string {
	f, h := fluid.Cat, fluid.Cat.Hazards
	var is, unknown []string
	for _, x := range []struct {
		word string
		flag *catalog.Flag
	}{
		{"flammable", h.Flammable}, {"toxic", h.Toxic}, {"corrosive", h.Corrosive}, {"an oxidiser", h.Oxidiser},
		{"able to displace the air you breathe", h.Asphyxiant}, {"able to polymerise", h.Polymerises},
		{"a peroxide former", h.PeroxideFormer}, {"able to decompose", h.Decomposes},
	} {
		switch {
		case x.flag == nil:
			unknown = append(unknown, x.word)
		case x.flag.Value:
			is = append(is, x.word)
		}
	}
	if t := fluid.Hottest; t != nil && t.Celsius() >= scaldingC {
		is = append(is, fmt.Sprintf("hot enough here to scald (up to %.0f °C)", t.Celsius()))
	}
	text := f.Name + " is " + join(is, "not listed with a hazard of its own; pressure itself can injure")
	if h.FlashPointC != nil && h.Flammable != nil && h.Flammable.Value {
		text += fmt.Sprintf(" (flash point %.0f °C)", h.FlashPointC.Value)
	}
	if len(unknown) > 0 {
		text += "; whether it is " + join(unknown, "") + " is not known to the catalog"
	}
	return text + ". Its safety data sheet decides."
}

func join(words []string, none string) string {
	switch len(words) {
	case 0:
		return none
	case 1:
		return words[0]
	}
	return strings.Join(words[:len(words)-1], ", ") + " and " + words[len(words)-1]
}
