package facts

import "reflect"

// subject is one thing a rule can judge.
type subject struct {
	id     string
	v      reflect.Value
	absent mask // filled in by a Scope
}

// Subjects are the ids of everything in a collection, in the order of the facts.
func (f *Facts) Subjects(collection string) []string {
	var ids []string
	for _, s := range f.subjects(collection) {
		ids = append(ids, s.id)
	}
	return ids
}

func (f *Facts) subjects(collection string) []subject {
	if collections[collection] == nil {
		return nil
	}
	top, _ := whole.find(collection)
	v := reflect.ValueOf(f).Elem().Field(top.index)
	switch {
	case collection == lineID:
		return []subject{{id: lineID, v: v}}
	case v.Kind() == reflect.Struct: // pairs, filed by rating
		var out []subject
		for g := range v.NumField() {
			out = append(out, each(v.Field(g), collections[collection])...)
		}
		return out
	}
	return each(v, collections[collection])
}

func each(list reflect.Value, s *shape) []subject {
	id := s.fields[s.at["id"]].index
	out := make([]subject, list.Len())
	for i := range out {
		v := list.Index(i)
		out[i] = subject{id: v.Field(id).String(), v: v}
	}
	return out
}
