package sheet

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// maxBytes is a hundred times the longest sheet a person keeps in order.
const maxBytes = 1_000_000

// Read reads the sheet at the path. Any error is of type Problems.
func Read(path string) (*Line, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	if info.IsDir() {
		return nil, whole(path, 0, "is a folder, not a line sheet", "name the YAML file in it")
	}
	if info.Size() > maxBytes {
		return nil, tooLarge(path, info.Size())
	}
	data, err := load(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	return Parse(path, data)
}

// load stops one byte past the limit, for a pipe or device does not tell its size.
func load(path string) ([]byte, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(io.LimitReader(file, maxBytes+1))
}

// Parse reads the text of a sheet; name stands in its messages as the file. Any error is of type Problems.
func Parse(name string, data []byte) (*Line, error) {
	if len(data) > maxBytes {
		return nil, tooLarge(name, int64(len(data)))
	}
	data = bytes.TrimPrefix(data, []byte("\uFEFF"))
	if p := notText(name, data); p != nil {
		return nil, Problems{*p}
	}
	root, p := document(name, data)
	if p != nil {
		return nil, Problems{*p}
	}
	r := &reader{file: name, line: &Line{File: name, Pos: map[string]Pos{}}, told: map[string]bool{}}
	r.sheet(root)
	if len(r.faults) > 0 {
		r.faults.sort()
		return nil, r.faults
	}
	sum := sha256.Sum256(data)
	r.line.Sum = hex.EncodeToString(sum[:])
	return r.line, nil
}

func whole(file string, line int, text, hint string) Problems {
	return Problems{{File: file, Line: line, Col: line, Text: text, Hint: hint}}
}

func tooLarge(file string, size int64) Problems {
	text := fmt.Sprintf("is %.1f MB, larger than the 1 MB a line sheet may have", float64(size)/1e6)
	return whole(file, 0, text, "check that it is the right file")
}

func unreadable(path string, err error) Problems {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return whole(path, 0, "no such file", didYouMean(filepath.Base(path), filesBeside(path), "check the path"))
	case errors.Is(err, fs.ErrPermission):
		return whole(path, 0, "may not be read", "ask its owner for leave to read it")
	}
	var cause *fs.PathError
	if errors.As(err, &cause) {
		err = cause.Err
	}
	return whole(path, 0, "could not be read: "+err.Error(), "check the path and the disk")
}

func filesBeside(path string) []string {
	entries, _ := os.ReadDir(filepath.Dir(path))
	var names []string
	for _, entry := range entries {
		if !entry.IsDir() {
			names = append(names, entry.Name())
		}
	}
	return names
}
