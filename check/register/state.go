package register

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"

	"lineworthy/check/record"
)

const (
	checkHead = `{"check":"`
	checkLen  = 16
	syncEvery = 256     // entries; a power cut costs at most this many sheets to be judged again
	longest   = 8 << 20 // bytes; no summary of a sheet of 1 MB is longer
)

// disk is what a state needs of a file, so that tests can fill it up.
type disk interface {
	io.ReaderAt
	io.WriterAt
	io.Closer
	Sync() error
	Truncate(size int64) error
}

// state is an open state file with the place of the last entry about each path.
type state struct {
	file    disk
	end     int64
	index   index
	bases   map[string]Basis
	Damaged int // lines that do not agree with their check
	unsaved int
	close   func() error
}

// openState locks the file and makes it ready to be added to. Errors name the file.
func openState(path string) (*state, error) {
	unlock, err := record.Lock(path)
	if err != nil {
		return nil, err
	}
	file, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o644)
	if err != nil {
		unlock()
		return nil, fmt.Errorf("the state file cannot be used: %w", err)
	}
	s := &state{file: file, close: func() error { err := file.Close(); unlock(); return err }}
	err = s.load(path)
	if err == nil {
		err = file.Truncate(s.end) // the torn end
	}
	if err != nil {
		return nil, errors.Join(err, s.close())
	}
	return s, nil
}

// readState opens a state file to look things up only. A run may be writing to it.
func readState(path string) (*state, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	s := &state{file: file, close: file.Close}
	if err := s.load(path); err != nil {
		return nil, errors.Join(err, file.Close())
	}
	if len(s.index.last) == 0 {
		return nil, errors.Join(fmt.Errorf("%s holds no verdicts: give the --state file of an earlier run", path), file.Close())
	}
	return s, nil
}

// passing is a state of its own for a run without a state file, on the disk so that memory stays flat.
func passing() (*state, error) {
	file, err := passingFile()
	if err != nil {
		return nil, err
	}
	return &state{file: file, index: newIndex(), bases: map[string]Basis{}, close: func() error {
		err := file.Close()
		_ = os.Remove(file.Name())
		return err
	}}, nil
}

// load indexes the file line by line. A last line without its line feed is torn, and left out.
func (s *state) load(path string) error {
	s.index, s.bases = newIndex(), map[string]Basis{}
	if err := s.sniff(path); err != nil {
		return err
	}
	r := bufio.NewReaderSize(io.NewSectionReader(s.file, 0, 1<<62), 1<<16)
	var long []byte
	for {
		text, err := r.ReadSlice('\n')
		if errors.Is(err, bufio.ErrBufferFull) && len(long) < longest {
			long = append(long, text...)
			continue
		}
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil {
			return fmt.Errorf("%s: %w", path, err)
		}
		if len(long) > 0 {
			text = append(long, text...)
		}
		s.take(text)
		s.end += int64(len(text))
		long = long[:0]
	}
}

// sniff keeps a file that is no state from being cut or added to.
func (s *state) sniff(path string) error {
	head := make([]byte, len(checkHead))
	n, err := s.file.ReadAt(head, 0)
	if err != nil && !errors.Is(err, io.EOF) {
		return fmt.Errorf("%s: %w", path, err)
	}
	if !bytes.HasPrefix([]byte(checkHead), head[:n]) {
		return fmt.Errorf("%s is not a state file of a register: name another file; it was not touched", path)
	}
	return nil
}

func (s *state) take(text []byte) {
	kind, body := opened(text)
	switch kind {
	case "basis":
		var b Basis
		if json.Unmarshal(body, &b) == nil {
			s.bases[b.id()] = b
			return
		}
	case "sheet":
		var e struct{ Path string }
		if json.Unmarshal(body, &e) == nil {
			s.index.put(e.Path, placed(s.end, len(text)))
			return
		}
	}
	s.Damaged++
}

// opened takes the kind and the object out of a line, or nothing when the line does not agree with its check.
func opened(text []byte) (kind string, body []byte) {
	rest, ok := bytes.CutPrefix(text, []byte(checkHead))
	if !ok || len(rest) < checkLen+len(`","sheet":`) {
		return "", nil
	}
	sum, rest := string(rest[:checkLen]), rest[checkLen:]
	kind, body = string(rest[3:8]), rest[10:]
	body, ok = bytes.CutSuffix(body, []byte("}\n"))
	if !ok || short(body) != sum {
		return "", nil
	}
	return kind, body
}

// put adds one line. A write that fails is taken back, so that the file stays whole on a full disk.
func (s *state) put(kind string, value any) (place, error) {
	body, err := json.Marshal(value)
	if err != nil {
		return 0, err
	}
	text := fmt.Appendf(nil, "%s%s\",\"%s\":%s}\n", checkHead, short(body), kind, body)
	if len(text) > longest || s.end > farthest-longest {
		return 0, fmt.Errorf("the state file cannot be added to: it is %d bytes long, and the next summary %d; begin a new one", s.end, len(text))
	}
	if _, err := s.file.WriteAt(text, s.end); err != nil {
		return 0, fmt.Errorf("the state file cannot be added to: %w; the sheets judged before are kept", errors.Join(err, s.file.Truncate(s.end)))
	}
	p := placed(s.end, len(text))
	s.end += int64(len(text))
	if s.unsaved++; s.unsaved%syncEvery == 0 {
		return p, s.file.Sync()
	}
	return p, nil
}

// rest makes sure that the basis of the run is in the file.
func (s *state) rest(b Basis) error {
	if _, ok := s.bases[b.id()]; ok {
		return nil
	}
	s.bases[b.id()] = b
	_, err := s.put("basis", b)
	return err
}
