package facts

import (
	"slices"

	"lineworthy/catalog"
	"lineworthy/check/resolve"
)

// bolting compares the bolts fitted with the holes drilled. The count is asked for where a flange that opens lets out a
// toxic, liquefied or deeply cold fluid; where the sheet states it, it is judged on any line.
func (b *builder) bolting(j *resolve.Joint, out *Joint) {
	if len(j.A.Family.Drilling) == 0 && len(j.B.Family.Drilling) == 0 {
		return
	}
	for _, e := range []*resolve.End{j.A, j.B} {
		out.ClassBolt = out.ClassBolt || e.Family.Standard == "ASME B16.5"
		out.AtHose = out.AtHose || e.Part != nil && e.Part.Sheet.Kind.V == "hose"
		fitted(e, out)
	}
	out.BoltsWant = out.Bolts.Known || slices.ContainsFunc(j.Run.Fluids, opensBadly)
	if !out.BoltsWant {
		return // nobody asks for the holes
	}
	holes(j.A, out)
	holes(j.B, out)
	if !out.Holes.Known {
		b.unknown(j.ID, "joints.bolt_holes", "the catalog holds no drilling for that class and size", "class and size of both flanges, as their standard prints them")
	}
	if d := drilling(j.A); out.Bolts.Known && d != nil {
		b.rests(j.A.Family.ID+" "+d.Class+" "+d.Size+" drilling", "drilling of "+j.A.Family.Name+", "+d.Class+" "+d.Size, d.Origin, j.A.Owner)
	}
}

// fitted takes the lower count where both ends state one.
func fitted(e *resolve.End, out *Joint) {
	if n := e.Sheet.Bolts; n.Set && (!out.Bolts.Known || int64(n.V) < out.Bolts.V) {
		out.Bolts = Know(int64(n.V))
	}
}

// holes takes the higher count: where the two differ not every hole can have a bolt.
func holes(e *resolve.End, out *Joint) {
	if d := drilling(e); d != nil && int64(d.Holes) > out.Holes.V {
		out.Holes = Know(int64(d.Holes))
	}
}

func opensBadly(f *resolve.Fluid) bool {
	form := f.Cat.Form
	return resolve.Yes(f.Cat.Hazards.Toxic) || form == "liquefied-gas" || form == "cryogenic-liquid"
}

// flat says whether the seal is a sheet between flanges, for which pressure and temperature limit each other.
func flat(k *catalog.Seal) bool { return k.HighestBar != nil && k.HighestC != nil }
