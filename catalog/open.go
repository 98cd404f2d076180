package catalog

import (
	"bytes"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"sync"
)

//go:embed fluids/*.yaml materials/*.yaml hoses/*.yaml connections/*.yaml seals/*.yaml sources/*.yaml tables/*.yaml
var builtIn embed.FS

//go:embed index.txt
var builtInIndex string

// Catalog answers look-ups. It is safe for concurrent use.
type Catalog struct {
	files fs.FS
	index string
	site  map[entry][]siteFile // files laid over the built-in one, in the order they were laid
	extra []named              // names that site files add

	mu     sync.Mutex
	loaded map[entry]*slot
}

// entry names one thing of the catalog.
type entry struct{ kind, id string }

func (e entry) path() string { return e.kind + "/" + e.id + ".yaml" }

// Open returns the built-in catalog without parsing any of it.
func Open() *Catalog { return open(builtIn, builtInIndex) }

func open(files fs.FS, index string) *Catalog {
	return &Catalog{files: files, index: index, loaded: map[entry]*slot{}}
}

// IDs returns the ids of the kind, sorted; nil for an unknown kind.
func (c *Catalog) IDs(kind string) []string {
	ids := map[string]bool{}
	files, _ := fs.Glob(c.files, kind+"/*.yaml")
	for _, f := range files {
		ids[idOf(f)] = true
	}
	for e := range c.site {
		if e.kind == kind {
			ids[e.id] = true
		}
	}
	return slices.Sorted(maps.Keys(ids))
}

// idOf is the id a file must carry: its name without the folder and the ending.
func idOf(path string) string {
	return strings.TrimSuffix(path[strings.LastIndexByte(path, '/')+1:], ".yaml")
}

// Raw returns the bytes of the files behind the entry as one YAML stream, the built-in file first;
// nil if there is no such entry.
func (c *Catalog) Raw(kind, id string) []byte {
	var parts [][]byte
	if raw := c.builtIn(entry{kind, id}); raw != nil {
		parts = append(parts, raw)
	}
	for _, s := range c.site[entry{kind, id}] {
		parts = append(parts, s.raw)
	}
	if parts == nil {
		return nil
	}
	return bytes.Join(parts, []byte("---\n"))
}

// Digest returns the SHA-256 of Raw in hexadecimal, or "" if there is no such entry. It is worked out once for each entry.
func (c *Catalog) Digest(kind, id string) string {
	if !c.has(entry{kind, id}) {
		return ""
	}
	s := c.slot(entry{kind, id})
	s.summed.Do(func() {
		if raw := c.Raw(kind, id); len(raw) > 0 {
			sum := sha256.Sum256(raw)
			s.digest = hex.EncodeToString(sum[:])
		}
	})
	return s.digest
}

// builtIn returns the bytes of the built-in file, or nil if there is none.
func (c *Catalog) builtIn(e entry) []byte {
	raw, err := fs.ReadFile(c.files, e.path())
	if err != nil {
		return nil
	}
	return raw
}

func (c *Catalog) has(e entry) bool {
	if len(c.site[e]) > 0 || c.slotted(e) {
		return true
	}
	_, err := fs.Stat(c.files, e.path())
	return err == nil
}
