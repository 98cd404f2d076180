package register

import (
	"context"
	"errors"
	"fmt"
	"os"

	"lineworthy/catalog"
	"lineworthy/check/units"
)

// Options are what a run works with.
type Options struct {
	Dir      string // folder of the sheets
	State    string // file to go on from and to add to; none when empty
	Against  string // state file of an earlier run to compare with; none when empty
	AsOf     units.Date
	DueDays  int // the due list reaches this many days past AsOf
	Workers  int // as many as there are processors when 0
	Judge    Judge
	Catalog  *catalog.Catalog
	Basis    Basis
	Found    func(sheets int)      // told before the first is judged; may be nil
	Progress func(done, total int) // may be nil
}

// ErrEmpty says that there is no sheet in the folder.
var ErrEmpty = errors.New("there is no .yaml or .yml file in it")

// Run judges every sheet of the folder and gives the register, which has to be closed. A sheet that cannot be judged is
// part of the register. Errors: the folder, the state file or the context.
func Run(ctx context.Context, o Options) (*Register, error) {
	if err := folder(o.Dir); err != nil {
		return nil, err
	}
	total := count(o.Dir)
	if total == 0 {
		return nil, fmt.Errorf("%s: %w", o.Dir, ErrEmpty)
	}
	r := &Register{o: o, day: o.AsOf, places: make([]place, 0, total), spots: &spots{}, papers: newPapers(), words: map[string]int{}}
	if err := r.open(); err != nil {
		return nil, err
	}
	if o.Found != nil {
		o.Found(total)
	}
	if err := r.judge(ctx, sheets(o.Dir), total, r.add); err != nil {
		return nil, errors.Join(err, r.state.file.Sync(), r.Close())
	}
	return r, nil
}

func (r *Register) open() (err error) {
	if r.o.Against != "" {
		if same(r.o.State, r.o.Against) {
			return errors.New("--state and --against are the same file: keep a copy of it before the change, and compare with that")
		}
		if r.earlier, err = readState(r.o.Against); err != nil {
			return err
		}
	}
	if r.o.State == "" {
		r.state, err = passing()
	} else {
		r.state, err = openState(r.o.State)
	}
	if err == nil {
		err = r.state.rest(r.o.Basis)
	}
	if err == nil {
		r.slips, err = newSlips()
	}
	if err != nil {
		return errors.Join(err, r.Close())
	}
	return nil
}

func same(a, b string) bool {
	x, err := os.Stat(a)
	if err != nil {
		return false
	}
	y, err := os.Stat(b)
	return err == nil && os.SameFile(x, y)
}
