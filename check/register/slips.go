package register

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"iter"
	"os"
)

// slips are the rows of the verdict table in the order of the sheets, in a passing file: reading the whole summaries back
// would take a tenth of the time of a run.
type slips struct {
	file *os.File
	w    *bufio.Writer
	text *json.Encoder
	n    int
}

func newSlips() (*slips, error) {
	file, err := passingFile()
	if err != nil {
		return nil, err
	}
	w := bufio.NewWriterSize(file, 1<<16)
	return &slips{file: file, w: w, text: json.NewEncoder(w)}, nil
}

func (s *slips) add(x Row) error {
	s.n++
	return noRoom(s.text.Encode(x))
}

// rows reads them all, from the first one added. A row that got lost is an error, not a shorter table.
func (s *slips) rows() iter.Seq2[Row, error] {
	return func(yield func(Row, error) bool) {
		if err := s.w.Flush(); err != nil {
			yield(Row{}, noRoom(err))
			return
		}
		in := json.NewDecoder(io.NewSectionReader(s.file, 0, 1<<62))
		for range s.n {
			var x Row
			err := in.Decode(&x)
			if !yield(x, err) || err != nil {
				return
			}
		}
	}
}

func (s *slips) close() error {
	err := s.file.Close()
	_ = os.Remove(s.file.Name())
	return err
}

// passingFile is a file without a name: a killed run leaves nothing behind. Where an open file cannot be taken out of its
// folder, closing takes it out.
func passingFile() (*os.File, error) {
	file, err := os.CreateTemp("", "register-*.jsonl")
	if err == nil {
		_ = os.Remove(file.Name())
	}
	return file, noRoom(err)
}

// noRoom says where the room is missing, for the user has not named that folder.
func noRoom(err error) error {
	if err == nil {
		return nil
	}
	return fmt.Errorf("the temporary folder has no room for the summaries: %w; TMPDIR names another folder", err)
}
