package facts

import "reflect"

// Scope answers single questions about one line: what Answers tells at length of every subject, for whoever has a million
// lines. It is not for concurrent use.
type Scope struct {
	f    *Facts
	line subject
	of   []looked               // by the place of the collection
	why  map[[2]string]*Unknown // made when the first fact is missing
}

// looked are the subjects of a collection, once they were asked for.
type looked struct {
	at  bool
	all []subject
}

// Scope starts with nothing looked at.
func (f *Facts) Scope() *Scope {
	line := subject{id: lineID, v: reflect.ValueOf(&f.Line).Elem()}
	line.absent = collections[lineID].absent(line.v)
	return &Scope{f: f, line: line, of: make([]looked, len(places))}
}

// Missing is what keeps a question from being put to the subjects in its scope: the Missing of its Answer. Whether anything
// is absent that it needs is looked at first: mostly nothing is.
func (s *Scope) Missing(q *Question) []Unknown {
	if q.own == 0 && q.ofLine&s.line.absent == 0 {
		return nil
	}
	var out []Unknown
	for _, x := range s.subjects(q) {
		if q.own&x.absent|q.ofLine&s.line.absent == 0 || !q.holds(s.line.v, true) || !q.holds(x.v, false) {
			continue
		}
		for _, n := range q.needs {
			if pick(n.ofLine, s.line.absent, x.absent).has(int(n.read)) {
				out = append(out, n.unknown(x.id, s.reasons()))
			}
		}
	}
	return out
}

// Judges says whether there is such a subject, and whether it is in the scope of the question.
func (s *Scope) Judges(q *Question, id string) bool {
	if !q.holds(s.line.v, true) {
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
	if !q.holds(s.line.v, true) {
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
	of := &s.of[q.of.place]
	if !of.at {
		of.at, of.all = true, s.f.subjects(q.subject)
		for i := range of.all {
			of.all[i].absent = q.of.shape.absent(of.all[i].v)
		}
	}
	return of.all
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

// mask has one bit for each field of a struct.
type mask uint64

func (m mask) has(field int) bool { return m>>field&1 != 0 }

// absent are the optional facts that a subject does not have. The value lies in facts that can be changed.
func (s *shape) absent(v reflect.Value) (m mask) {
	p := v.Addr().UnsafePointer()
	for i := range s.optional {
		if s.optional[i].absent(p) {
			m |= 1 << s.optional[i].field
		}
	}
	return m
}
