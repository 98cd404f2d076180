package resolve

import (
	"lineworthy/catalog"
	"lineworthy/check/sheet"
)

// layers settles what each layer of a hose is made of: what the sheet states, else the one material its class allows.
func (r *resolver) layers(p *Part, path string) error {
	stated := []struct {
		role string
		of   sheet.Of[string]
	}{{"liner", p.Sheet.Layers.Liner}, {"reinforcement", p.Sheet.Layers.Reinforcement}, {"cover", p.Sheet.Layers.Cover}}
	for _, s := range stated {
		m, err := r.material(s.of, path+"."+s.role)
		if err != nil {
			return err
		}
		layer, err := r.classLayer(p.Hose, s.role)
		if err != nil {
			return err
		}
		if m != nil {
			layer.Material, layer.Stated = m, true
		}
		if layer.Material != nil || s.role == "liner" || len(layer.Options) > 0 {
			p.Layers = append(p.Layers, layer)
		}
	}
	return nil
}

func (r *resolver) classLayer(h *catalog.Hose, role string) (Layer, error) {
	layer := Layer{Role: role}
	if h == nil {
		return layer, nil
	}
	for _, l := range h.Layers {
		if l.Role != role {
			continue
		}
		layer.Options, layer.Origin = l.Materials, l.Origin
		if len(l.Materials) == 1 {
			m, err := r.cat.Material(l.Materials[0])
			if err != nil {
				return layer, err
			}
			r.use("materials", m.ID)
			layer.Material = m
		}
	}
	return layer, nil
}
