package register

import (
	"context"
	"errors"
	"iter"
	"runtime"
	"sync"
)

// job is one sheet on its way; its answer comes back in the order of the sheets.
type job struct {
	found
	answer chan answer
}

type answer struct {
	entry *Entry
	kept  bool // it stands in the state file already, at place
	place place
}

// ahead is how many sheets each worker may be ahead of the one that is written next.
const ahead = 8

// judge runs the workers and hands what they found over in order. Only this goroutine adds to the state. Sheets that come
// or go during the run make the total a guess.
func (r *Register) judge(ctx context.Context, all iter.Seq[found], total int, take func(*Entry, place) error) error {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	workers := r.o.Workers
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	jobs, order := make(chan job), make(chan job, ahead*workers)
	var group sync.WaitGroup
	defer group.Wait()
	defer stop()
	for range workers {
		group.Go(func() { r.work(ctx, jobs) })
	}
	group.Go(func() { feed(ctx, all, jobs, order) })
	for done := 1; ; done++ {
		if more, err := r.next(ctx, order, take); err != nil || !more {
			return errors.Join(err, r.state.file.Sync())
		}
		if r.o.Progress != nil {
			r.o.Progress(done, max(done, total))
		}
	}
}

func feed(ctx context.Context, all iter.Seq[found], jobs, order chan<- job) {
	defer close(order)
	defer close(jobs)
	for f := range all {
		j := job{f, make(chan answer, 1)}
		select {
		case order <- j:
		case <-ctx.Done():
			return
		}
		select {
		case jobs <- j:
		case <-ctx.Done():
			return
		}
	}
}

func (r *Register) work(ctx context.Context, jobs <-chan job) {
	k := &judging{r.o.Dir, r.o.Judge, r.o.Catalog, r.o.Basis.id(), r.o.AsOf.String()}
	for j := range jobs {
		if j.fault != "" {
			e := &Entry{Path: j.path, Basis: k.basis, AsOf: k.asOf, Undated: true, Faults: []string{j.path + ": " + j.fault}}
			j.answer <- answer{entry: e}
			continue
		}
		j.answer <- r.one(ctx, k, j.found)
	}
}

func (r *Register) one(ctx context.Context, k *judging, f found) answer {
	path := f.path
	text, sum, err := k.read(f)
	if err != nil {
		e := &Entry{Path: path, Basis: k.basis, AsOf: k.asOf}
		e = e.failed(err)
		e.Broken = false // it lies with the file
		return answer{entry: e}
	}
	if old, at, ok := r.state.about(path); ok && old.holds(sum, k.basis, k.asOf) {
		return answer{old, true, at}
	}
	return answer{entry: k.entry(ctx, path, text, sum)}
}

// next takes the next sheet in order, if there is one. What came from an ended context is not kept: it says nothing about
// the sheet.
func (r *Register) next(ctx context.Context, order <-chan job, take func(*Entry, place) error) (more bool, err error) {
	var a answer
	select {
	case j, open := <-order:
		if !open {
			return false, ctx.Err()
		}
		select {
		case a = <-j.answer:
		case <-ctx.Done():
		}
	case <-ctx.Done():
	}
	if err := ctx.Err(); err != nil {
		return false, err
	}
	if !a.kept {
		if a.place, err = r.state.put("sheet", a.entry); err != nil {
			return false, err
		}
		r.judged++
	}
	return true, take(a.entry, a.place)
}
