package record

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"iter"
	"os"
	"slices"
	"time"
)

// Broken is the first line at which a record stops being what was written.
type Broken struct {
	Line int64  `json:"line"` // from 1
	Why  string `json:"why"`
}

func (b *Broken) Error() string { return fmt.Sprintf("line %d is broken: %s", b.Line, b.Why) }

// Torn is the end of a write that was cut short, or a changed end of the file. It was never acknowledged, unless the end was changed.
type Torn struct {
	Line  int64 `json:"line"`  // the line it would be
	Bytes int64 `json:"bytes"` // how many are there
}

func (t *Torn) Error() string {
	return fmt.Sprintf("line %d is not complete (%d bytes): its write was cut short, or the end of the file was changed", t.Line, t.Bytes)
}

// Proof is what is known about a record after every line was checked.
type Proof struct {
	Lines    int64    `json:"lines"`               // proven, from the first on
	Head     string   `json:"head"`                // SHA-256 of the last proven line; 64 zeros when there is none
	Broken   *Broken  `json:"broken,omitempty"`    // nil when the chain holds
	Torn     *Torn    `json:"torn,omitempty"`      // nil when the last write is complete
	Backward []int64  `json:"backward,omitempty"`  // lines with a time before that of the line above
	SetAside []int64  `json:"set_aside,omitempty"` // lines that name bytes moved out of the record
	Missing  []string `json:"missing,omitempty"`   // heads noted earlier that are no longer in the chain
}

// Clean says whether every byte of the record is proven and every head asked for was found.
func (p Proof) Clean() bool { return p.Broken == nil && p.Torn == nil && len(p.Missing) == 0 }

// Verify proves the chain of the record at the path. Heads are line sums noted earlier, which must still be in it: they
// show a cut-off end. The error is about reading the file, never about what is in it.
func Verify(path string, heads ...string) (Proof, error) {
	p := Proof{Head: origin, Missing: slices.DeleteFunc(slices.Clone(heads), func(h string) bool { return h == origin })}
	var before time.Time
	for e, err := range walk(path) {
		switch {
		case errors.As(err, &p.Broken), errors.As(err, &p.Torn):
			return p, nil
		case err != nil:
			return p, err
		}
		p.Lines, p.Head = e.Seq, e.sum
		if e.Time.Before(before) {
			p.Backward = append(p.Backward, e.Seq)
		}
		if e.Kind == KindSetAside {
			p.SetAside = append(p.SetAside, e.Seq)
		}
		before = e.Time
		p.Missing = slices.DeleteFunc(p.Missing, func(h string) bool { return h == e.sum })
	}
	return p, nil
}

// Entries gives each line, proven up to there, and stops at the first *Broken or fault in reading. A torn end was never
// acknowledged and is passed over. The record may be written to meanwhile.
func Entries(path string) iter.Seq2[Entry, error] {
	return func(yield func(Entry, error) bool) {
		for e, err := range walk(path) {
			var torn *Torn
			if errors.As(err, &torn) || !yield(e.Entry, err) || err != nil {
				return
			}
		}
	}
}

// proven is an entry with the SHA-256 of its line.
type proven struct {
	Entry
	sum string
}

func walk(path string) iter.Seq2[proven, error] {
	return func(yield func(proven, error) bool) {
		file, size, err := snapshot(path)
		if err != nil {
			yield(proven{}, err)
			return
		}
		defer file.Close()
		scan := bufio.NewScanner(io.LimitReader(file, size))
		scan.Buffer(make([]byte, 1<<16), maxLine)
		scan.Split(wholeLines)
		prev, read := last{sum: origin}, int64(0)
		for scan.Scan() {
			read += int64(len(scan.Bytes()))
			e, err := follows(prev, scan.Bytes(), read == size)
			if !yield(e, err) || err != nil {
				return
			}
			prev = last{seq: e.Seq, sum: e.sum}
		}
		switch err := scan.Err(); {
		case errors.Is(err, bufio.ErrTooLong):
			yield(proven{}, &Broken{prev.seq + 1, fmt.Sprintf("it is longer than the %d bytes a line may have", maxLine)})
		case err != nil:
			yield(proven{}, fmt.Errorf("%s: reading stopped after line %d: %w", path, prev.seq, err))
		}
	}
}

// follows proves that the line is the one that was written after prev. Only the final line can be torn.
func follows(prev last, line []byte, final bool) (proven, error) {
	at := prev.seq + 1
	if final && torn(line) {
		return proven{}, &Torn{at, int64(len(line))}
	}
	e, err := parse(line)
	switch {
	case err != nil:
		return proven{}, &Broken{at, err.Error()}
	case e.Seq != at:
		return proven{}, &Broken{at, fmt.Sprintf("it says it is line %d: lines were put in, taken out or moved", e.Seq)}
	case e.Prev != prev.sum:
		return proven{}, &Broken{at, "it does not follow the line above it, which was changed or exchanged"}
	}
	return proven{e, digest(line)}, nil
}

// wholeLines splits after each line feed and keeps it, so that an end without one can be told.
func wholeLines(data []byte, atEOF bool) (int, []byte, error) {
	if i := bytes.IndexByte(data, '\n'); i >= 0 {
		return i + 1, data[:i+1], nil
	}
	if atEOF && len(data) > 0 {
		return len(data), data, nil
	}
	return 0, nil, nil
}

// snapshot takes the size while no writer is at work. What stands before it never changes. Without leave to lock, as
// in a read-only folder, the size of the moment has to do.
func snapshot(path string) (*os.File, int64, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, 0, err
	}
	if _, err := os.Stat(path + lockEnding); err == nil {
		if unlock, err := Lock(path); err == nil {
			defer unlock()
		}
	}
	info, err := file.Stat()
	if err == nil && !info.Mode().IsRegular() {
		err = fmt.Errorf("%s is no plain file: name the file of a record", path)
	}
	if err != nil {
		return nil, 0, errors.Join(err, file.Close())
	}
	return file, info.Size(), nil
}
