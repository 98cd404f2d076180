package inspect

import (
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// hazard is one kind of harm with what keeps it off. A hazard that the catalog does not know counts as there.
type hazard struct {
	word string
	flag func(h *catalog.Hazards) *catalog.Flag
	wear []string
}

var hazards = []hazard{
	{"flammable", func(h *catalog.Hazards) *catalog.Flag { return h.Flammable }, []string{
		"clothing and shoes that carry charge off; no naked flame, no spark, no phone that is not made for it", "extinguisher fit for the fluid, at hand"}},
	{"toxic", func(h *catalog.Hazards) *catalog.Flag { return h.Toxic }, []string{
		"breathing protection of the kind that the data sheet names, fit-tested, with an escape set near", "gas detector where the data sheet gives a limit; wind direction known, way out free"}},
	{"corrosive", func(h *catalog.Hazards) *catalog.Flag { return h.Corrosive }, []string{
		"goggles tight at the sides and a face shield", "gloves, apron and boots of a material that the data sheet names", "safety shower and eye wash tried today"}},
	{"an oxidiser", func(h *catalog.Hazards) *catalog.Flag { return h.Oxidiser }, []string{
		"clothing and gloves clean and free of oil and grease; nothing that burns nearby"}},
	{"able to displace the air", func(h *catalog.Hazards) *catalog.Flag { return h.Asphyxiant }, []string{
		"oxygen alarm worn where the place is closed or low; nobody goes in after a person without breathing air"}},
}

const hotToTouch = units.Temperature(273.15 + 60) // practice, no source

func equipment(l *resolve.Line) (out []Advice) {
	add := func(text, why string) {
		i := slices.IndexFunc(out, func(a Advice) bool { return a.Text == text })
		switch {
		case i < 0:
			out = append(out, Advice{text, why})
		case !strings.Contains(out[i].Why, why):
			out[i].Why += "; " + why
		}
	}
	add("safety glasses with side shields, gloves, safety shoes: for every line under pressure", "pressure itself")
	var seen []string
	for _, r := range l.Runs {
		for _, f := range r.Fluids {
			if !slices.Contains(seen, f.Cat.ID) {
				seen = append(seen, f.Cat.ID)
				wear(f, add)
			}
		}
	}
	return out
}

func wear(f *resolve.Fluid, add func(text, why string)) {
	for _, h := range hazards {
		flag := h.flag(&f.Cat.Hazards)
		why := f.Cat.Name + " is " + h.word
		if flag == nil {
			why = "whether " + f.Cat.Name + " is " + h.word + " is not known: taken as yes"
		}
		for _, text := range h.wear {
			if resolve.Yes(flag) {
				add(text, why)
			}
		}
	}
	if f.Cat.Form == "liquefied-gas" || f.Cat.Form == "cryogenic-liquid" {
		add("gloves against cold, loose enough to throw off, and a face shield", f.Cat.Name+" gets very cold where it is let off")
	}
	if f.Hottest != nil && *f.Hottest > hotToTouch {
		add("gloves and sleeves against heat", f.Cat.Name+" can be above 60 °C")
	}
}
