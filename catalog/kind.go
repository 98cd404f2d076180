package catalog

import (
	"reflect"
	"strings"
)

// The kinds of entry; each is also the name of its folder.
const (
	Fluids      = "fluids"
	Materials   = "materials"
	Hoses       = "hoses"
	Connections = "connections"
	Seals       = "seals"
	Sources     = "sources"
)

// Kinds lists every kind of entry in the order reports show them.
var Kinds = []string{Fluids, Materials, Hoses, Connections, Seals, Sources}

// shapes gives the whole-file type of each kind, against which files are decoded and checked.
var shapes = map[string]reflect.Type{
	Fluids:      reflect.TypeFor[fluidFile](),
	Materials:   reflect.TypeFor[Material](),
	Hoses:       reflect.TypeFor[Hose](),
	Connections: reflect.TypeFor[Connection](),
	Seals:       reflect.TypeFor[Seal](),
	Sources:     reflect.TypeFor[Source](),
}

// fluidFile is a whole fluid file. A Fluid itself leaves its rows undecoded until they are asked for.
type fluidFile struct {
	Fluid `yaml:",inline"`
	Table Compatibility `yaml:"compatibility,omitempty"`
}

// singular is the word for one entry of the kind.
func singular(kind string) string { return strings.TrimSuffix(kind, "s") }
