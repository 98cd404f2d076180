// Package catalog holds what is known about fluids, materials, hoses, connections, seals and the
// documents behind them: one YAML file per thing, built into the program.
//
// A file is read only when it is asked for, so start-up does not grow with the catalog. Names are
// found through index.txt, which `go generate ./catalog` writes and a test proves fresh.
//
// Every value carries its source and its standing. A value that is not in the catalog is unknown,
// never harmless. A site may lay its own directory over the built-in catalog, see [Catalog.Overlay]:
// it can add entries, bars and evidence, but it cannot lift a legal bar or outvote an adverse value
// that somebody read in a document.
//
// Values returned by look-ups are shared between callers and must not be changed.
package catalog

//go:generate go test -run Fresh -update .
