package decide

import (
	"maps"
	"reflect"
	"strings"
)

// kept are copies of findings that hold on to nothing of the line they come from, without what differs between elements that
// are equal in all that the rule goes by.
func (a *alone) kept(found []Finding) []Finding {
	var out []Finding
	for _, x := range found {
		x = x.clone()
		for _, n := range a.names {
			n.put(&x, "")
		}
		out = append(out, x)
	}
	return out
}

// named adds findings that were kept, under the names of another element.
func (a *alone) named(out, found []Finding, element reflect.Value) []Finding {
	for _, x := range found {
		own := false
		for _, n := range a.names {
			if !own && !n.isField() {
				x.Words, own = maps.Clone(x.Words), true // other lines have the kept ones
			}
			n.put(&x, n.read(element))
		}
		out = append(out, x)
	}
	return out
}

func (n name) isField() bool {
	return n.report == "subject" || n.report == "part" || n.report == "case"
}

func (n name) put(f *Finding, s string) {
	switch n.report {
	case "subject":
		f.Subject = s
	case "part":
		f.Part = s
	case "case":
		f.Case = s
	default:
		f.Words[n.report] = s
	}
}

// read is the fact as a report repeats it.
func (n name) read(element reflect.Value) string {
	v := element.Field(n.field)
	if v.Kind() == reflect.String {
		return v.String()
	}
	return strings.Join(v.Interface().([]string), ", ")
}
