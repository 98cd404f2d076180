package catalog

import (
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"reflect"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"
)

// Overlay returns the catalog with a site directory laid over it. The directory has the same folders; a file
// with a new id adds an entry, one with a known id replaces what it writes, top-level key by key. Names and
// bars are added, compatibility rows are replaced material by material, and mating rows pair by pair.
//
// Every value must have the standing site and name its evidence in source or note. All faults of the
// directory come back together as [Faults].
func (c *Catalog) Overlay(dir string) (*Catalog, error) {
	folders, err := os.ReadDir(dir)
	if err != nil {
		return nil, fmt.Errorf("site catalog: %w", err)
	}
	over := &Catalog{files: c.files, index: c.index, site: maps.Clone(c.site), extra: slices.Clone(c.extra), loaded: map[entry]*slot{}}
	if over.site == nil {
		over.site = map[entry][]siteFile{}
	}
	var faults Faults
	for _, f := range folders {
		if f.IsDir() && !strings.HasPrefix(f.Name(), ".") {
			faults = append(faults, over.layFolder(os.DirFS(dir), filepath.ToSlash(dir), f.Name())...)
		}
	}
	if len(faults) == 0 {
		faults = over.lintSite()
	}
	return over, faults.err()
}

// layFolder lays every file of one folder over the catalog.
func (c *Catalog) layFolder(files fs.FS, dir, kind string) (faults Faults) {
	if !slices.Contains(Kinds, kind) {
		return Faults{{path.Join(dir, kind), 0, "no such folder in a catalog; want one of " + strings.Join(Kinds, ", ")}}
	}
	found, err := fs.ReadDir(files, kind)
	if err != nil {
		return Faults{{path.Join(dir, kind), 0, err.Error()}}
	}
	for _, f := range found {
		if strings.HasPrefix(f.Name(), ".") {
			continue
		}
		if path.Ext(f.Name()) != ".yaml" {
			faults = append(faults, Fault{path.Join(dir, kind, f.Name()), 0, "want files ending in .yaml here"})
			continue
		}
		raw, err := fs.ReadFile(files, kind+"/"+f.Name())
		if err == nil {
			err = c.layFile(entry{kind, idOf("/" + f.Name())}, path.Join(dir, kind, f.Name()), raw)
		}
		faults = append(faults, asFaults(path.Join(dir, kind, f.Name()), err)...)
	}
	return faults
}

func (c *Catalog) layFile(e entry, at string, raw []byte) error {
	value := reflect.New(fluidOr(shapes[e.kind]))
	if err := decode(at, raw, value.Interface()); err != nil {
		return err
	}
	if f, ok := value.Interface().(*Fluid); ok {
		rows, err := f.AllRows()
		if err != nil {
			return err
		}
		f.table = &table{path: at, site: rows}
	}
	var faults Faults
	if c.has(e) {
		faults = bare(at, raw, value.Elem().Type())
	}
	c.site[e] = append(slices.Clone(c.site[e]), siteFile{at, raw, value.Elem(), topKeys(raw)})
	c.extra = append(c.extra, namesOf(e.kind, value.Interface())...)
	return faults.err()
}

// fluidOr is the type a look-up returns, which for a fluid is not the shape of its file.
func fluidOr(t reflect.Type) reflect.Type {
	if t == reflect.TypeFor[fluidFile]() {
		return reflect.TypeFor[Fluid]()
	}
	return t
}

func asFaults(path string, err error) Faults {
	if err == nil {
		return nil
	}
	if faults, ok := err.(Faults); ok {
		return faults
	}
	return Faults{{path, 0, err.Error()}}
}

// topKeys returns the top-level keys a file writes.
func topKeys(raw []byte) (keys []string) {
	for _, key := range pairsOf(parse(raw)) {
		keys = append(keys, key.name)
	}
	return keys
}

// plainKeys may be laid over a known entry although they carry no evidence: they change no judgement.
var plainKeys = []string{"id", "name", "also", "remark"}

// bare finds keys that would change a known entry without evidence, e.g. what an alloy contains.
func bare(path string, raw []byte, t reflect.Type) (faults Faults) {
	for _, key := range pairsOf(parse(raw)) {
		field, ok := fieldOf(t, key.name)
		if ok && !slices.Contains(plainKeys, key.name) && !bearsOrigin(field) {
			faults = append(faults, Fault{path, key.value.Line, fmt.Sprintf(
				"%s has no place for evidence, so a site file cannot change it for a known entry: add an entry with an id of your own", key.name)})
		}
	}
	return faults
}

// parse returns the root node of a file that has already been decoded without fault.
func parse(raw []byte) *yaml.Node {
	var doc yaml.Node
	if yaml.Unmarshal(raw, &doc) != nil || len(doc.Content) == 0 {
		return &yaml.Node{}
	}
	return doc.Content[0]
}

// SiteFiles returns the paths of the files laid over the built-in catalog, sorted.
func (c *Catalog) SiteFiles() []string {
	var paths []string
	for _, files := range c.site {
		for _, f := range files {
			paths = append(paths, f.path)
		}
	}
	slices.Sort(paths)
	return paths
}
