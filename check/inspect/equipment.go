package inspect

import (
	"slices"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/facts"
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// hazard is one kind of harm with what keeps it off. A hazard that the catalog does not know counts as there.
type hazard struct {
	word  string
	flag  func(h *catalog.Hazards) *catalog.Flag
	wear  []string
	soaks bool // what is liquid goes through a glove that is not made for it
}

const (
	flammable = "flammable"
	oxidiser  = "an oxidiser"
)

var hazards = []hazard{
	{flammable, func(h *catalog.Hazards) *catalog.Flag { return h.Flammable }, []string{
		"clothing and shoes that carry charge off; no naked flame, no spark, no phone that is not made for it", "extinguisher fit for the fluid, at hand"}, true},
	{"toxic", func(h *catalog.Hazards) *catalog.Flag { return h.Toxic }, []string{
		"breathing protection of the kind that the data sheet names, fit-tested, with an escape set near", "gas detector where the data sheet gives a limit; wind direction known, way out free"}, true},
	{"corrosive", func(h *catalog.Hazards) *catalog.Flag { return h.Corrosive }, []string{
		"goggles tight at the sides and a face shield", "gloves, apron and boots of a material that the data sheet names", "safety shower and eye wash tried today"}, false},
	{oxidiser, func(h *catalog.Hazards) *catalog.Flag { return h.Oxidiser }, []string{
		"clothing and gloves clean and free of oil and grease; nothing that burns nearby"}, false},
	{"able to displace the air", func(h *catalog.Hazards) *catalog.Flag { return h.Asphyxiant }, []string{
		"oxygen alarm worn where the place is closed or low; nobody goes in after a person without breathing air"}, false},
}

const (
	hotToTouch = units.Temperature(273.15 + 60) // practice, no source
	jetKPa     = 1000                           // from here on a fine jet of liquid is taken to go through skin (practice, no source)
)

// advise adds what to wear and why, each text once.
type advise func(text, why string)

func equipment(l *resolve.Line, f *facts.Facts) (out []Advice) {
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
	for _, r := range l.Runs {
		for _, x := range r.Fluids {
			wear(x, "", add)
		}
		held(r.Source, l, add)
		held(r.Target, l, add)
		if most, known := highest(r, f, regulated(r)); known && most >= jetKPa && liquid(r) {
			add("no hand near a leak, gloved or not: a fine jet goes through skin. Whoever is hit needs a hospital at once, however small the wound", "liquid in run "+r.Key+" under high pressure")
		}
	}
	for _, p := range l.Nearby {
		held(p.Vessel, l, add)
	}
	if f.Line.HazardInReach {
		add("an escape set for breathing at hand, wind direction known, way out free", "an opening in reach holds what can react with what is carried")
	}
	return out
}

func liquid(r *resolve.Run) bool {
	return slices.ContainsFunc(r.Fluids, func(x *resolve.Fluid) bool { return x.Cat.Form == "liquid" })
}

// held is what a vessel has in it already, where the line does not carry it anyway: it stands at the opening that is uncoupled.
func held(v *resolve.Vessel, l *resolve.Line, add advise) {
	if v == nil || v.Contents == nil || slices.ContainsFunc(l.Fluids, func(x *resolve.Fluid) bool { return x.Cat == v.Contents.Cat }) {
		return
	}
	wear(v.Contents, " in "+v.Key, add)
}

func wear(f *resolve.Fluid, where string, add advise) {
	name, liquid := f.Cat.Name+where, f.Cat.Form == "liquid"
	for _, h := range hazards {
		flag := h.flag(&f.Cat.Hazards)
		if !resolve.Yes(flag) || h.word == oxidiser && (f.Cat.ID == "air" || where != "") { // air feeds a fire and is no oxidiser; what stays in a tank meets no clothes
			continue
		}
		why := name + " is " + h.word
		if flag == nil {
			why = "whether " + name + " is " + h.word + " is not known: taken as yes"
		}
		for _, text := range h.wear {
			add(text, why)
		}
		switch {
		case liquid && h.soaks:
			add("gloves of a material that the data sheet names, for many let a liquid through", why)
		case !liquid && h.word == flammable:
			add("a burning gas is put out by shutting its source and not otherwise; gas detector for it, tried today", why)
		}
	}
	if f.Cat.Form == "liquefied-gas" || f.Cat.Form == "cryogenic-liquid" {
		add("gloves against cold, loose enough to throw off, and a face shield", name+" gets very cold where it is let off")
	}
	if f.Hottest != nil && *f.Hottest > hotToTouch {
		add("face shield, gloves, sleeves and apron against heat", name+" can be above 60 °C")
	}
}
