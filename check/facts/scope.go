package facts

import "reflect"

// Scope answers single questions about one line: what Answers tells at length of every subject, for whoever has a million
// lines. It is not for concurrent use.
type Scope struct {
	f    *Facts
	line reflect.Value
	of   map[string][]subject
	why  map[[2]string]*Unknown // made when the first fact is missing
}

// Scope starts with nothing looked at.
func (f *Facts) Scope() *Scope {
	return &Scope{f: f, line: reflect.ValueOf(&f.Line).Elem(), of: map[string][]subject{}}
}

// Missing is what keeps a question from being put to the subjects in its scope: the Missing of its Answer.
func (s *Scope) Missing(q *Question) []Unknown {
	if len(q.needs) == 0 || !q.holds(s.line, true) {
		return nil
	}
	var out []Unknown
	for _, x := range s.subjects(q) {
		for _, n := range q.needs {
			if absent(pick(n.ofLine, s.line, x.v).Field(int(n.read))) && q.holds(x.v, false) {
				out = append(out, n.unknown(x.id, s.reasons()))
			}
		}
	}
	return out
}

// Judges says whether there is such a subject, and whether it is in the scope of the question.
func (s *Scope) Judges(q *Question, id string) bool {
	if !q.holds(s.line, true) {
		return false
	}
	for _, x := range s.subjects(q) {
		if x.id == id && q.holds(x.v, false) {
			return true
		}
	}
	return false
}

// Judged are the subjects in the scope of the question, whether it can be put to them or not.
func (s *Scope) Judged(q *Question) []string {
	if !q.holds(s.line, true) {
		return nil
	}
	var out []string
	for _, x := range s.subjects(q) {
		if q.holds(x.v, false) {
			out = append(out, x.id)
		}
	}
	return out
}

func (s *Scope) subjects(q *Question) []subject {
	all, ok := s.of[q.subject]
	if !ok {
		all = s.f.subjects(q.subject)
		s.of[q.subject] = all
	}
	return all
}

func (s *Scope) reasons() map[[2]string]*Unknown {
	if s.why == nil {
		s.why = make(map[[2]string]*Unknown, len(s.f.Unknowns))
		for i := range s.f.Unknowns {
			u := &s.f.Unknowns[i]
			s.why[[2]string{u.Subject, u.Fact}] = u
		}
	}
	return s.why
}

// holds says whether all conditions of the scope hold that are on the line, or all that are on the subject.
func (q *Question) holds(v reflect.Value, ofLine bool) bool {
	for _, c := range q.scope {
		if c.ofLine == ofLine && !c.holds(v) {
			return false
		}
	}
	return true
}
