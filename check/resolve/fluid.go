package resolve

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

func (r *resolver) allFluids() error {
	for i := range r.sheet.Fluids {
		n := &r.sheet.Fluids[i]
		f, err := r.fluid(n.Key, &n.V)
		if err != nil {
			return err
		}
		if f != nil {
			r.fluids[n.Key] = f
			r.line.Fluids = append(r.line.Fluids, f)
		}
	}
	return nil
}

func (r *resolver) fluid(key string, s *sheet.Fluid) (*Fluid, error) {
	f, err := r.catalogFluid(key, s.Fluid, "fluids."+key+".fluid")
	if f == nil || err != nil {
		return nil, err
	}
	f.Sheet = s
	f.Role = role(key, s)
	f.Lowest = first(s.Temperature.Lowest, r.sheet.Site.Lowest)
	f.Hottest = first(s.Temperature.Highest, r.sheet.Site.Highest)
	if s.Concentration.Set {
		f.Strength = &s.Concentration.V
	}
	if f.Props.ID == "water" && f.Hottest != nil && *f.Hottest > hotWater {
		f.Services = append(f.Services, "hot-water")
	}
	return f, nil
}

// hotWater is where hose practice begins to treat water as hot: 65 °C, the top of the chemical hose classes (practice).
const hotWater = units.Temperature(338.15)

// catalogFluid finds a fluid and the row that holds its properties.
func (r *resolver) catalogFluid(key string, name sheet.Of[string], path string) (*Fluid, error) {
	row, err := lookup(r, "fluids", name, path, r.cat.Fluid, func(f *catalog.Fluid) string { return f.ID })
	if row == nil || err != nil {
		return nil, err
	}
	props := row
	if row.PropertiesOf != "" {
		if props, err = r.cat.Fluid(row.PropertiesOf); err != nil {
			return nil, err
		}
		r.use("fluids", props.ID)
	}
	return &Fluid{Key: key, Cat: row, Props: props, Services: services(row)}, nil
}

// role is the role the sheet states, else the one its name says, else product.
func role(key string, s *sheet.Fluid) string {
	if s.Role.Set {
		return s.Role.V
	}
	if slices.Contains([]string{"pad", "flush", "previous", "test", "steam"}, key) {
		return key
	}
	return "product"
}

// first is the first temperature that was written, or nil.
func first(ts ...sheet.Of[units.Temperature]) *units.Temperature {
	for i := range ts {
		if ts[i].Set {
			return &ts[i].V
		}
	}
	return nil
}

// services are the words a hose standard uses for the fluid: those its row states, and those its form says.
func services(f *catalog.Fluid) []string {
	words := slices.Clone(f.Services)
	switch f.Form {
	case "liquid":
		words = append(words, "liquid")
		if len(f.Services) == 0 {
			words = append(words, "chemicals")
		}
	case "compressed-gas", "dissolved-gas":
		words = append(words, "gas")
	case "vapour":
		words = append(words, "vapour")
	case "cryogenic-liquid":
		words = append(words, "cryogenic")
	default:
		words = append(words, f.Form)
	}
	if flag := f.Hazards.Flammable; flag != nil && flag.Value {
		words = append(words, "flammable")
	}
	words = append(words, "fluid:"+f.ID)
	slices.Sort(words)
	return slices.Compact(words)
}

// Yes reads a hazard on the safe side: what is not known counts as present.
func Yes(f *catalog.Flag) bool { return f == nil || f.Value }
