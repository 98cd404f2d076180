package register

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// sheets lists the sheets below a folder, sorted by path with slashes, and what of the tree could not be read. Hidden
// files and folders are no sheets; links to folders are not followed, or a loop would never end.
func sheets(dir string) (paths []string, faults map[string]string, err error) {
	info, err := os.Stat(dir)
	if err == nil && !info.IsDir() {
		err = fmt.Errorf("%s is a file: name the folder of the sheets", dir)
	}
	if err != nil {
		return nil, nil, err
	}
	faults = map[string]string{}
	_ = filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		rel, _ := filepath.Rel(dir, path)
		rel = filepath.ToSlash(rel)
		switch {
		case err != nil:
			faults[rel] = "the folder could not be read: " + cause(err) + "; sheets in it are not judged"
			paths = append(paths, rel)
		case rel != "." && strings.HasPrefix(d.Name(), "."):
			if d.IsDir() {
				return fs.SkipDir
			}
		case !d.IsDir() && isSheet(d.Name()):
			paths = append(paths, rel)
		}
		return nil
	})
	slices.Sort(paths)
	return slices.Compact(paths), faults, nil
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
