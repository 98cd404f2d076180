package facts

import "reflect"

// Answer says what one question could be asked of: every subject is in one of the first three lists.
type Answer struct {
	Judged        []string
	NotApplicable []string
	Open          []string  // subjects that could not be judged
	Missing       []Unknown // why: one for each fact that is missing
}

// lineID is the subject of rules about the line as a whole.
const lineID = "line"

// Answers puts all questions to the facts of a line, in their order.
func (f *Facts) Answers(questions []*Question) []Answer {
	why := make(map[[2]string]*Unknown, len(f.Unknowns))
	for i := range f.Unknowns {
		u := &f.Unknowns[i]
		why[[2]string{u.Subject, u.Fact}] = u
	}
	line, of := reflect.ValueOf(&f.Line).Elem(), map[string][]subject{}
	out := make([]Answer, len(questions))
	for i, q := range questions {
		if _, ok := of[q.subject]; !ok {
			of[q.subject] = f.subjects(q.subject)
		}
		for _, s := range of[q.subject] {
			q.put(&out[i], s, line, why)
		}
	}
	return out
}

// put files one subject.
func (q *Question) put(a *Answer, s subject, line reflect.Value, why map[[2]string]*Unknown) {
	for _, c := range q.scope {
		if !c.holds(pick(c.ofLine, line, s.v)) {
			a.NotApplicable = append(a.NotApplicable, s.id)
			return
		}
	}
	known := len(a.Missing)
	for _, n := range q.needs {
		if absent(pick(n.ofLine, line, s.v).Field(int(n.read))) {
			a.Missing = append(a.Missing, n.unknown(s.id, why))
		}
	}
	if len(a.Missing) > known {
		a.Open = append(a.Open, s.id)
		return
	}
	a.Judged = append(a.Judged, s.id)
}

// unknown is what the builder noted, or else what the fact itself says of who can supply it.
func (n need) unknown(id string, why map[[2]string]*Unknown) Unknown {
	if n.ofLine {
		id = lineID
	}
	if u := why[[2]string{id, n.path}]; u != nil {
		return *u
	}
	return Unknown{Subject: id, Fact: n.path, Why: "not stated", Ask: n.ask}
}

func pick[T any](ofLine bool, line, subject T) T {
	if ofLine {
		return line
	}
	return subject
}

// absent says whether an optional fact is not known: a word that is empty, else by its mark.
func absent(v reflect.Value) bool {
	if v.Kind() == reflect.String {
		return v.Len() == 0
	}
	return !v.Field(1).Bool()
}
