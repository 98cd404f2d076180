package compare

import (
	"reflect"

	"lineworthy/check/sheet"
)

// things lists what a sheet describes. Old names are already turned into the new ones in ids and references.
func (d *differ) things(l *sheet.Line, to func(string) string) []thing {
	out := []thing{{kind: "line", id: "line", label: "the line", line: l.ID.Pos.Line, leaves: d.names.collect(reflect.ValueOf(*l), "")}}
	add := func(kind, id, label string, at sheet.Pos, v any) {
		out = append(out, thing{kind, kind + " " + id, label, at.Line, d.names.collect(reflect.ValueOf(v), "")})
	}
	for _, f := range l.Fluids {
		add("fluid", to(f.Key), "fluid "+f.Key, f.Pos, f.V)
	}
	for _, v := range l.Vessels {
		add("vessel", to(v.Key), "vessel "+v.Key, v.Pos, v.V)
		for _, p := range v.V.Points {
			add("point", to(v.Key)+"."+p.Key, "point "+p.Key+" of "+v.Key, p.Pos, p.V)
		}
	}
	for _, r := range l.Runs {
		add("run", r.Key, "run "+r.Key, r.Pos, r.V)
		for _, p := range r.V.Parts {
			add(p.Kind.V, to(p.ID.V), p.Kind.V+" "+p.ID.V, p.ID.Pos, p)
		}
	}
	for _, n := range l.Nearby {
		id := to(n.Vessel.V) + "." + n.Point.V
		add("nearby", id, "point in reach, "+n.Point.V+" of "+n.Vessel.V, n.Vessel.Pos, n)
	}
	for _, e := range l.Evidence {
		id := d.names.id(kinds["Evidence.material"], e.Material.V) + " in " + d.names.id(kinds["Evidence.fluid"], e.Fluid.V)
		add("evidence", id, "paper on "+e.Material.V+" in "+e.Fluid.V, e.Material.Pos, e)
	}
	for i := range out {
		d.references(&out[i], to)
	}
	return out
}

// references turns old names within values into the new ones, so that a renamed vessel is no other route.
func (d *differ) references(t *thing, to func(string) string) {
	for i, l := range t.leaves {
		switch {
		case l.owner == "Run" && l.name == "carries":
			t.leaves[i].norm = listed(l.norm, to)
		case l.name == "vessel", l.owner == "Part" && l.name == "id":
			t.leaves[i].norm = to(l.norm)
		}
	}
}
