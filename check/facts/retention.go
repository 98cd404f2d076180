package facts

import (
	"lineworthy/check/resolve"
	"lineworthy/check/units"
)

// held is the highest pressure that what holds the ends of a hose is good for, up to a size in mm. What is not listed holds
// what the hose holds.
//
// EN 14424 for the screwed ferrule (published scope); EN 14420-3 for clamp shells (recalled); bands and worm drives are
// common practice without a source, each at the low end of what is said of it.
var held = map[string][]struct{ sizeMM, bar float64 }{
	"screwed-ferrule": {{25, 25}, {40, 16}},
	"clamp-shells":    {{1000, 25}},
	"band":            {{1000, 10}},
	"worm-drive":      {{1000, 3}},
	"none":            {{1000, 0}},
}

// retained lowers the rating of a hose to what its ends hold. The reason is not empty when the size is beyond the method.
func retained(p *resolve.Part, rated units.GaugePressure) (units.GaugePressure, string) {
	rows, limited := held[p.Sheet.Retention.V]
	if !limited {
		return rated, ""
	}
	if len(rows) == 1 {
		return min(rated, units.GaugePressure(rows[0].bar*1e5)), ""
	}
	inside, known := bore(p)
	if !known {
		return 0, "the size of " + p.ID + " is not stated, and its ends hold by size"
	}
	for _, row := range rows {
		if float64(inside)*1000 <= row.sizeMM+1 { // an inch is 25.4 mm
			return min(rated, units.GaugePressure(row.bar*1e5)), ""
		}
	}
	return 0, "nothing is known of a " + p.Sheet.Retention.V + " of that size"
}

// What no band may hold (common practice, no source): gas above 2 bar, hot water above 65 °C, and the fluids below.
const (
	bandGas   = units.GaugePressure(2e5)
	bandWater = units.Temperature(65 + 273.15)
)

// bandBarred is what the hose carries that rules out ends held by bands, worm drives or nothing; empty for none.
func (b *builder) bandBarred(p *resolve.Part) string {
	for _, f := range p.Run.Fluids {
		if why := b.barredFluid(p, f); why != "" {
			return f.Cat.Name + ", " + why
		}
	}
	return ""
}

func (b *builder) barredFluid(p *resolve.Part, f *resolve.Fluid) string {
	h := f.Cat.Hazards
	switch {
	case f.Cat.Form == "liquefied-gas" || f.Cat.Form == "cryogenic-liquid" || f.Cat.Form == "dissolved-gas":
		return "a liquefied, dissolved or deeply cold gas"
	case f.Props.ID == "oxygen" || f.Props.ID == "hydrogen" || f.Cat.ID == "steam":
		return "which is barred at any pressure"
	case isGas(f) && b.above(p, bandGas):
		return "a gas that can exceed 2 bar(g)"
	case f.Props.ID == "water" && (f.Hottest == nil || *f.Hottest > bandWater):
		return "hot water"
	case isGas(f):
		return ""
	case resolve.Yes(h.Toxic), resolve.Yes(h.Corrosive):
		return "which is toxic or corrosive"
	case resolve.Yes(h.Flammable) && b.above(p, 0):
		return "a flammable liquid under pressure"
	}
	return ""
}

// above says whether any case pushes harder than p on the part; one that is not known may.
func (b *builder) above(part *resolve.Part, p units.GaugePressure) bool {
	for _, x := range b.at(part.Run, part.Index) {
		if !x.known || x.p > p {
			return true
		}
	}
	return false
}
