package register

import (
	"encoding/json"
	"errors"
	"iter"
	"runtime"
	"sync"
)

// about is the last entry about a path, if there is one. It is safe for several goroutines as long as none puts.
func (s *state) about(path string) (*Entry, place, bool) {
	p, ok := s.index.of(path)
	if !ok {
		return nil, p, false
	}
	e, err := s.at(p)
	return e, p, err == nil && e.Path == path
}

func (s *state) at(p place) (*Entry, error) {
	text := make([]byte, p.size())
	if _, err := s.file.ReadAt(text, p.at()); err != nil {
		return nil, err
	}
	kind, body := opened(text)
	if kind != "sheet" {
		return nil, errors.New("the state file changed while it was read: run it again")
	}
	e := new(Entry)
	return e, json.Unmarshal(body, e)
}

// all reads some entries on all cores and gives them in order. The error of one is given in its place.
func (s *state) all(places []place) iter.Seq2[*Entry, error] {
	type read struct {
		e   *Entry
		err error
	}
	got, workers := make([]read, len(places)), runtime.GOMAXPROCS(0)
	var group sync.WaitGroup
	for w := range workers {
		group.Go(func() {
			for i := w; i < len(places); i += workers {
				got[i].e, got[i].err = s.at(places[i])
			}
		})
	}
	group.Wait()
	return func(yield func(*Entry, error) bool) {
		for _, r := range got {
			if !yield(r.e, r.err) {
				return
			}
		}
	}
}
