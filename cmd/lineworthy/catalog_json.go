package main

import (
	"io"

	"gopkg.in/yaml.v3"

	"lineworthy/catalog"
)

// showJSON writes the entry under the keys of its file, with the site's rows laid over it.
func showJSON(w io.Writer, c *catalog.Catalog, kind, id string) error {
	value, err := lookUp(c, kind, id)
	if err != nil {
		return err
	}
	entry, err := asMap(value)
	if err != nil {
		return err
	}
	if f, ok := value.(*catalog.Fluid); ok {
		rows, err := f.AllRows()
		if err != nil {
			return err
		}
		if entry["compatibility"], err = asList(rows); err != nil {
			return err
		}
	}
	return writeJSON(w, map[string]any{"kind": one(kind), "entry": entry})
}

func lookUp(c *catalog.Catalog, kind, id string) (any, error) {
	switch kind {
	case catalog.Fluids:
		return c.Fluid(id)
	case catalog.Materials:
		return c.Material(id)
	case catalog.Hoses:
		return c.Hose(id)
	case catalog.Connections:
		return c.Connection(id)
	case catalog.Seals:
		return c.Seal(id)
	case catalog.Sources:
		return c.Source(id)
	}
	return c.Table(id)
}

// asMap turns an entry into plain values by way of its YAML keys, so that both forms speak one language.
func asMap(value any) (m map[string]any, err error) {
	err = reshape(value, &m)
	return m, err
}

func asList(rows []catalog.Row) (list []any, err error) {
	err = reshape(rows, &list)
	return list, err
}

func reshape(from, into any) error {
	text, err := yaml.Marshal(from)
	if err != nil {
		return err
	}
	return yaml.Unmarshal(text, into)
}
