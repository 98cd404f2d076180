package register

import (
	"fmt"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"strings"
	"unicode/utf8"
)

// found is one sheet, or a part of the folder that could not be read.
type found struct {
	path  string // from the folder, with slashes; letters that are no UTF-8 replaced, for no text of a register can hold them
	file  string // the same as the system has it
	fault string // why it could not be read; empty for a sheet
}

// folder says whether it is one that can be walked.
func folder(dir string) error {
	info, err := os.Stat(dir)
	if err == nil && !info.IsDir() {
		err = fmt.Errorf("%s is a file: name the folder of the sheets", dir)
	}
	return err
}

// sheets walks through the sheets below a folder, each folder in the order of its names; a million paths take no memory.
// Hidden files and folders are no sheets; links to folders are not followed, or a loop would never end.
func sheets(dir string) iter.Seq[found] {
	return func(yield func(found) bool) {
		_ = filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
			rel, _ := filepath.Rel(dir, path)
			f := found{file: filepath.ToSlash(rel)}
			f.path = legible(f.file)
			switch {
			case err != nil:
				f.fault = "the folder could not be read: " + cause(err) + "; sheets in it are not judged"
			case rel != "." && strings.HasPrefix(d.Name(), "."):
				if d.IsDir() {
					return fs.SkipDir
				}
				return nil
			case d.IsDir() || !isSheet(d.Name()):
				return nil
			}
			if !yield(f) {
				return fs.SkipAll
			}
			return nil
		})
	}
}

// legible is a path as JSON has it: each byte that is no UTF-8 replaced.
func legible(path string) string {
	if utf8.ValidString(path) {
		return path
	}
	return string([]rune(path))
}

// count is how many sheets the walk finds now.
func count(dir string) (n int) {
	for range sheets(dir) {
		n++
	}
	return n
}

func isSheet(name string) bool {
	end := strings.ToLower(filepath.Ext(name))
	return end == ".yaml" || end == ".yml"
}

// cause leaves the path of an error out, for the caller names it.
func cause(err error) string {
	if p, ok := err.(*fs.PathError); ok {
		return p.Err.Error()
	}
	return err.Error()
}
