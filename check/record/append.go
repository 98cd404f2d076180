package record

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"
)

// Receipt says what is on the disk now.
type Receipt struct {
	First, Last int64   // sequence numbers of the lines asked for
	Head        string  // SHA-256 of the last line: note it elsewhere to be able to show a cut-off end
	Backward    []int64 // lines of this call whose time lies before that of the line above: a clock went back
	SetAside    string  // file with the bytes of an earlier write cut short; empty when there was none
}

// Store appends to one record. It is safe for several goroutines and processes.
type Store struct {
	path string
	open func(path string) (disk, error)
}

// disk is what Append needs of a file, so that tests can fill it up or cut it off.
type disk interface {
	io.Writer
	io.ReaderAt
	io.Closer
	Sync() error
	Truncate(size int64) error
	Stat() (os.FileInfo, error)
}

// At names the file of a record, which Append makes when it is not there.
func At(path string) *Store {
	return &Store{path, func(p string) (disk, error) { return os.OpenFile(p, os.O_RDWR|os.O_CREATE|os.O_APPEND, 0o644) }}
}

// last is the line the next one is tied to.
type last struct {
	seq  int64
	sum  string
	time time.Time
}

// Append writes the items, one line each, and returns once they are on the disk. With an error none of them counts as
// recorded, and lines acknowledged earlier are as they were; after a crash within the call some of the items may stand.
// The receipt names a torn end that was set aside even when there is an error. Errors: *Broken when the last line is not
// what was written; else the cause from the system, such as syscall.ENOSPC or fs.ErrPermission, is wrapped.
func (s *Store) Append(items ...Item) (r Receipt, err error) {
	if len(items) == 0 {
		return r, errors.New("nothing to record")
	}
	unlock, err := Lock(s.path)
	if err != nil {
		return r, err
	}
	defer unlock()
	file, err := s.open(s.path)
	if err != nil {
		return r, fmt.Errorf("nothing was recorded: %w", err)
	}
	defer func() { err = errors.Join(err, file.Close()) }()
	return s.append(file, items)
}

func (s *Store) append(file disk, items []Item) (r Receipt, err error) {
	info, err := file.Stat()
	if err == nil && !info.Mode().IsRegular() {
		err = fmt.Errorf("%s is no plain file: nothing was recorded", s.path)
	}
	if err != nil {
		return r, err
	}
	prev, size, err := s.recover(file, info.Size(), items[0].Time, &r)
	if err != nil {
		return r, fmt.Errorf("%s: nothing was recorded: %w", s.path, err)
	}
	text, prev, err := lines(prev, items, &r)
	if err != nil {
		return r, fmt.Errorf("%s: nothing was recorded: %w", s.path, err)
	}
	if err := put(file, size, text); err != nil {
		return r, fmt.Errorf("%s: nothing was recorded, and what was recorded before is as it was: %w", s.path, err)
	}
	r.First, r.Last, r.Head = prev.seq-int64(len(items))+1, prev.seq, prev.sum
	if info.Size() > 0 {
		return r, nil
	}
	if err := syncFolder(filepath.Dir(s.path)); err != nil {
		return r, fmt.Errorf("%s: the file may be lost in a power cut: %w", s.path, err)
	}
	return r, nil
}

func lines(prev last, items []Item, r *Receipt) (text []byte, end last, err error) {
	for _, item := range items {
		item.Time = item.Time.UTC().Round(0)
		line, err := item.line(prev)
		if err != nil {
			return nil, prev, err
		}
		if item.Time.Before(prev.time) {
			r.Backward = append(r.Backward, prev.seq+1)
		}
		text = append(text, line...)
		prev = last{prev.seq + 1, digest(line), item.Time}
	}
	return text, prev, nil
}

// put writes at the end and waits for the disk. A write that fails is taken back, or a full disk would leave half a line.
func put(file disk, size int64, text []byte) error {
	_, err := file.Write(text)
	if err == nil {
		err = file.Sync()
	}
	if err == nil {
		return nil
	}
	if back := errors.Join(file.Truncate(size), file.Sync()); back != nil {
		return fmt.Errorf("%w (taking the write back failed too: %w; the next append looks after it)", err, back)
	}
	return err
}
