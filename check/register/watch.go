package register

import (
	"context"
	"io"
	"slices"
	"time"
)

// watch is a register that is kept up to date. What hoses and dates have in common stays that of the first table.
type watch struct {
	*Register
	stamps map[string]stamp // by path, of the sheets that are there
	looks  int
}

// Watch looks at the folder at every tick, judges what changed, and writes the verdicts that are not what they were, in
// the forms text or jsonl. It ends without an error when the context does, or when there are no more ticks.
func (r *Register) Watch(ctx context.Context, ticks <-chan time.Time, out io.Writer, format string) error {
	w, err := r.watched()
	if err != nil {
		return err
	}
	for {
		select {
		case <-ctx.Done():
			return nil
		case _, more := <-ticks:
			if !more {
				return nil
			}
			if err := w.look(ctx, out, format); err != nil && ctx.Err() == nil {
				return err
			}
		}
	}
}

// watched notes where the first table has each sheet. No stamps yet: the first look reads them all, so that no change
// since is missed.
func (r *Register) watched() (*watch, error) {
	r.o.Progress = nil
	w, n := &watch{Register: r, stamps: map[string]stamp{}}, 0
	for e, err := range r.Entries() {
		if err != nil {
			return nil, err
		}
		r.state.index.put(e.Path, r.places[n])
		w.stamps[e.Path] = stamp{}
		n++
	}
	return w, nil
}

// look judges what is not as it was at the last look, and writes what came of it.
func (w *watch) look(ctx context.Context, out io.Writer, format string) error {
	if err := folder(w.o.Dir); err != nil {
		return err
	}
	all := slices.Collect(sheets(w.o.Dir))
	news := &news{out: out, format: format, wide: w.wide()}
	if err := w.vanished(all, news); err != nil {
		return err
	}
	if err := w.again(ctx, all, news); err != nil {
		return err
	}
	return news.end()
}

// again judges what changed. The index is brought up to date only afterwards, for the workers read it.
func (w *watch) again(ctx context.Context, all []found, n *news) error {
	open, stamps := w.changed(all)
	if len(open) == 0 {
		return nil
	}
	var places []place
	keep := func(_ *Entry, p place) error { places = append(places, p); return nil }
	if err := w.judge(ctx, slices.Values(open), len(open), keep); err != nil {
		return err
	}
	for i, f := range open {
		last, _ := w.state.index.of(f.path)
		if _, there := w.stamps[f.path]; !there || last != places[i] {
			if err := w.update(f.path, places[i], n); err != nil {
				return err
			}
		}
		w.stamps[f.path] = stamps[i]
	}
	return nil
}

// update puts a new entry in the place of the old one, if there is one.
func (w *watch) update(path string, p place, n *news) error {
	e, err := w.state.at(p)
	if err != nil {
		return err
	}
	if _, there := w.stamps[path]; there {
		old, err := w.last(path)
		if err != nil {
			return err
		}
		w.words[kind(old)]--
		if row(old) != row(e) {
			n.verdict(e)
		}
	} else {
		n.verdict(e)
	}
	w.words[kind(e)]++
	w.state.index.put(path, p)
	return nil
}

// vanished takes out the sheets that are no longer there.
func (w *watch) vanished(all []found, n *news) error {
	there := make(map[string]bool, len(all))
	for _, f := range all {
		there[f.path] = true
	}
	var gone []string
	for path := range w.stamps {
		if !there[path] {
			gone = append(gone, path)
		}
	}
	for _, path := range sorted(gone) {
		e, err := w.last(path)
		if err != nil {
			return err
		}
		w.words[kind(e)]--
		delete(w.stamps, path)
		n.gone(e)
	}
	return nil
}

// last is what was found about a sheet at the look before.
func (w *watch) last(path string) (*Entry, error) {
	p, _ := w.state.index.of(path)
	return w.state.at(p)
}

func (w *watch) wide() int { return min(max(w.widest, 4), nameWidth) }
