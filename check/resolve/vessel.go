package resolve

import (
	"fmt"

	"lineworthy/catalog"
	"lineworthy/check/sheet"
)

func (r *resolver) allVessels() error {
	for i := range r.sheet.Vessels {
		n := &r.sheet.Vessels[i]
		v, err := r.vessel(n.Key, &n.V)
		if err != nil {
			return err
		}
		r.tanks[n.Key] = v
		r.line.Vessels = append(r.line.Vessels, v)
	}
	return nil
}

func (r *resolver) vessel(key string, s *sheet.Vessel) (*Vessel, error) {
	path := "vessels." + key
	v := &Vessel{Key: key, Sheet: s, Points: map[string]*End{}}
	var err error
	if v.Material, err = r.material(s.Material, path+".material"); err != nil {
		return nil, err
	}
	if s.Contains != nil {
		if v.Contents, err = r.contents(key, s.Contains, path+".contains"); err != nil {
			return nil, err
		}
	}
	for i := range s.Points {
		p := &s.Points[i]
		end, err := r.end(key, p.Key, &p.V, path+".points."+p.Key)
		if err != nil {
			return nil, err
		}
		end.Vessel = v
		if end.Material == nil {
			end.Material = v.Material
		}
		v.Points[p.Key] = end
	}
	return v, nil
}

func (r *resolver) contents(key string, s *sheet.Contents, path string) (*Fluid, error) {
	f, err := r.catalogFluid(key+"'s contents", s.Fluid, path+".fluid")
	if f == nil || err != nil {
		return nil, err
	}
	f.Role = "contents"
	f.Lowest, f.Hottest = first(r.sheet.Site.Lowest), first(r.sheet.Site.Highest)
	if s.Concentration.Set {
		f.Strength = &s.Concentration.V
	}
	return f, nil
}

// end resolves one connection end; a nil sheet end gives an end about which nothing is known.
func (r *resolver) end(owner, name string, s *sheet.End, path string) (*End, error) {
	e := &End{Owner: owner, Name: name, Sheet: s, Path: path}
	if s == nil {
		return e, nil
	}
	var err error
	e.Family, err = lookup(r, "connections", s.Standard, path+".standard", r.cat.Connection, func(c *catalog.Connection) string { return c.ID })
	if err != nil {
		return nil, err
	}
	e.Material, err = r.material(s.Material, path+".material")
	return e, err
}

func (r *resolver) nearby() error {
	for i := range r.sheet.Nearby {
		n := &r.sheet.Nearby[i]
		v := r.tanks[n.Vessel.V]
		if v == nil || v.Points[n.Point.V] == nil {
			continue // the sheet's own validation has reported it
		}
		r.line.Nearby = append(r.line.Nearby, &Point{ID: fmt.Sprintf("%s/%s", n.Vessel.V, n.Point.V), Sheet: n, Vessel: v, End: v.Points[n.Point.V]})
	}
	return nil
}

func (r *resolver) evidence() error {
	for i := range r.sheet.Evidence {
		s := &r.sheet.Evidence[i]
		path := fmt.Sprintf("evidence[%d]", i)
		m, err := r.material(s.Material, path+".material")
		if err != nil {
			return err
		}
		f, err := lookup(r, "fluids", s.Fluid, path+".fluid", r.cat.Fluid, func(f *catalog.Fluid) string { return f.ID })
		if err != nil {
			return err
		}
		if m != nil && f != nil {
			r.line.Evidence = append(r.line.Evidence, Evidence{Sheet: s, Material: m, Fluid: f})
		}
	}
	return nil
}
