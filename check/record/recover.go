package record

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"time"
)

// recover finds the line to go on from. An end that a crash tore is moved to a file of its own and named in the record.
func (s *Store) recover(file disk, size int64, now time.Time, r *Receipt) (last, int64, error) {
	tail, err := lastLine(file, size)
	if err != nil {
		return last{}, 0, err
	}
	if !torn(tail) {
		prev, err := read(tail)
		return prev, size, err
	}
	whole := size - int64(len(tail))
	if whole == 0 && !begun(tail) {
		return last{}, 0, errors.New("it holds something that is no record: name another file")
	}
	before, err := lastLine(file, whole)
	if err != nil {
		return last{}, 0, err
	}
	prev, err := read(before)
	if err != nil {
		return last{}, 0, err
	}
	return s.setAside(file, whole, tail, prev, now, r)
}

// torn tells the two marks of a write cut short. No line that was acknowledged bears either: JSON has no NUL bytes.
func torn(tail []byte) bool {
	return len(tail) > 0 && (tail[len(tail)-1] != '\n' || bytes.IndexByte(tail, 0) >= 0)
}

// begun says whether bytes can be the start of a first line, or a page of it that never reached the disk. A note of one line,
// say, is no record and must not be moved out of its file.
func begun(tail []byte) bool {
	for i, c := range []byte(`{"seq":1,"prev":"`) {
		if i < len(tail) && tail[i] != c && tail[i] != 0 {
			return false
		}
	}
	return true
}

// setAside keeps the bytes before it cuts them off. It may be cut short itself and done again: the name of the file comes
// from its content.
func (s *Store) setAside(file disk, size int64, tail []byte, prev last, now time.Time, r *Receipt) (last, int64, error) {
	sum := digest(tail)
	aside := fmt.Sprintf("%s.torn-%d-%s", s.path, prev.seq+1, sum[:16])
	if err := Replace(aside, tail, 0o644); err != nil {
		return prev, size, fmt.Errorf("the torn end (%d bytes) could not be set aside: %w", len(tail), err)
	}
	r.SetAside = aside
	if err := file.Truncate(size); err != nil {
		return prev, size, fmt.Errorf("the torn end could not be cut off: %w", err)
	}
	text, prev, err := lines(prev, []Item{{now, KindSetAside, map[string]any{
		"file": filepath.Base(aside), "bytes": len(tail), "sha256": sum,
	}}}, r)
	if err == nil {
		err = put(file, size, text)
	}
	return prev, size + int64(len(text)), err
}

// read takes the place in the chain from a line. Verify proves the chain; here the one line has to be sound.
func read(line []byte) (last, error) {
	if len(line) == 0 {
		return last{sum: origin}, nil
	}
	e, err := parse(line)
	if err != nil {
		return last{}, fmt.Errorf("its last line cannot be built upon: %w. Keep a copy, prove the record, and start a new file", err)
	}
	return last{e.Seq, digest(line), e.Time}, nil
}

// lastLine reads backwards from size to the line feed before the last line, so the cost does not grow with the record.
func lastLine(file io.ReaderAt, size int64) ([]byte, error) {
	for n := min(size, 1<<12); ; n = min(size, 4*n) {
		tail := make([]byte, n)
		if _, err := file.ReadAt(tail, size-n); err != nil && err != io.EOF {
			return nil, err
		}
		if i := bytes.LastIndexByte(tail[:max(n-1, 0)], '\n'); i >= 0 {
			return tail[i+1:], nil
		}
		switch {
		case n == size:
			return tail, nil
		case n > maxLine:
			return nil, fmt.Errorf("its last line is longer than %d bytes: it is no record", maxLine)
		}
	}
}
