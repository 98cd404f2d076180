package batch

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// mostLine is the longest line that is read. A sheet of a thousand parts has about a tenth of that.
const mostLine = 16 << 20

// Stream is every line of a reader, named NAME:1 and on. Empty lines are left out, but counted.
func Stream(name string, r io.Reader) iter.Seq[Item] {
	return func(yield func(Item) bool) {
		in, buffer := bufio.NewReaderSize(r, 64<<10), []byte(nil)
		for n := 1; ; n++ {
			line, err := longLine(in, buffer[:0])
			buffer = line
			i := Item{Name: fmt.Sprintf("%s:%d", name, n), Text: bytes.TrimSpace(line)}
			if errors.Is(err, bufio.ErrTooLong) {
				i = Item{Name: i.Name, Err: fmt.Errorf("the line is longer than %d bytes", mostLine)}
				err = nil
			}
			if err != nil && err != io.EOF {
				yield(Item{Name: i.Name, Err: err})
				return
			}
			if (len(i.Text) > 0 || i.Err != nil) && !yield(i) || err == io.EOF {
				return
			}
		}
	}
}

// longLine reads up to the end of the line, and passes over the rest of one that is too long.
func longLine(in *bufio.Reader, b []byte) ([]byte, error) {
	long := false
	for {
		part, err := in.ReadSlice('\n')
		if long = long || len(b)+len(part) > mostLine; !long {
			b = append(b, part...)
		}
		switch {
		case err == bufio.ErrBufferFull:
		case long:
			return b[:0], bufio.ErrTooLong
		default:
			return b, err
		}
	}
}

// Files is every file below a folder that ends in one of the suffixes, in the order of their names.
func Files(dir string, suffixes ...string) iter.Seq[Item] {
	return func(yield func(Item) bool) {
		var buffer []byte
		err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
			if err != nil {
				if !yield(Item{Name: path, Err: err}) {
					return fs.SkipAll
				}
				return nil
			}
			if d.IsDir() || !slices.ContainsFunc(suffixes, func(s string) bool { return strings.HasSuffix(path, s) }) {
				return nil
			}
			i := readFile(path, buffer)
			if buffer = i.Text[:0]; !yield(i) {
				return fs.SkipAll
			}
			return nil
		})
		if err != nil {
			yield(Item{Name: dir, Err: err})
		}
	}
}

// File is one file as a whole.
func File(path string) Item { return readFile(path, nil) }

// readFile reads a file into a buffer that may grow.
func readFile(path string, buffer []byte) Item {
	i := Item{Name: path, Text: buffer}
	f, err := os.Open(path)
	if err != nil {
		i.Err = err
		return i
	}
	defer f.Close()
	for {
		if len(i.Text) == cap(i.Text) {
			i.Text = slices.Grow(i.Text, 32<<10+len(i.Text))
		}
		n, err := f.Read(i.Text[len(i.Text):cap(i.Text)])
		i.Text = i.Text[:len(i.Text)+n]
		switch {
		case len(i.Text) > mostLine:
			i.Text, i.Err = i.Text[:0], fmt.Errorf("the file is longer than %d bytes", mostLine)
			return i
		case err == io.EOF:
			return i
		case err != nil:
			i.Err = err
			return i
		}
	}
}
