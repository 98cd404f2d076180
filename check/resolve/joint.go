package resolve

import (
	"fmt"

	"lineworthy/catalog"
	"lineworthy/check/sheet"
)

// joints pairs each end with the one it faces, from the source along the parts to the destination. Branch parts sit on
// the end that their sheet calls mount.
func (r *resolver) joints(run *Run) error {
	at := run.SourceEnd
	for _, p := range run.Parts {
		switch {
		case p.Sheet.Kind.V == "weight":
		case p.Branch:
			if err := r.joint(run, p.Mount, p.Inlet); err != nil {
				return err
			}
		default:
			if err := r.joint(run, at, p.Inlet); err != nil {
				return err
			}
			at = p.Outlet
		}
	}
	return r.joint(run, at, run.TargetEnd)
}

func (r *resolver) joint(run *Run, a, b *End) error {
	j := &Joint{ID: fmt.Sprintf("%s.%s to %s.%s", a.Owner, a.Name, b.Owner, b.Name), A: a, B: b, Run: run}
	for _, e := range []*End{a, b} {
		if e.Sheet == nil {
			continue
		}
		j.Stated = j.Stated || e.Sheet.NoSeal.Set || len(e.Sheet.Seals) > 0
		for i := range e.Sheet.Seals {
			s, err := r.seal(&e.Sheet.Seals[i], e.Path+".seal")
			if err != nil {
				return err
			}
			s.ID = fmt.Sprintf("%s seal %d", j.ID, len(j.Seals)+1)
			j.Seals = append(j.Seals, s)
		}
	}
	run.Joints = append(run.Joints, j)
	return nil
}

func (r *resolver) seal(s *sheet.Seal, path string) (*Seal, error) {
	out := &Seal{Sheet: s}
	var err error
	out.Kind, err = lookup(r, "seals", s.Kind, path+".kind", r.cat.Seal, func(k *catalog.Seal) string { return k.ID })
	if err != nil {
		return nil, err
	}
	if out.Material, err = r.material(s.Material, path+".material"); err != nil {
		return nil, err
	}
	if out.Material == nil && !s.Material.Set && out.Kind != nil && len(out.Kind.Materials) == 1 {
		if out.Material, err = r.cat.Material(out.Kind.Materials[0]); err != nil {
			return nil, err
		}
		r.use("materials", out.Material.ID)
	}
	return out, nil
}
