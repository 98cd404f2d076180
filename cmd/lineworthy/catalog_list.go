package main

import (
	"fmt"
	"io"
	"text/tabwriter"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
)

// counted and listed are what the list command writes for machines.
type (
	counted struct {
		Kind  string `json:"kind"`
		Count int    `json:"count"`
	}
	listed struct {
		Kind string `json:"kind"`
		ID   string `json:"id"`
		Name string `json:"name"`
	}
)

func newList(s streams) *cobra.Command {
	var f catalogFlags
	return reads(&cobra.Command{
		Use:     "list [KIND]",
		Short:   "List the kinds of entry, or the entries of one kind",
		Example: "  lineworthy catalog list\n  lineworthy catalog list hoses",
		Args:    cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			c, err := f.open()
			if err != nil {
				return err
			}
			if len(args) == 0 {
				return writeKinds(s.out, f, c)
			}
			kind, ok := kindOf(args[0])
			if !ok {
				return unknownKind(args[0])
			}
			return writeEntries(s.out, f, c, kind)
		},
	}, &f)
}

func idsOf(c *catalog.Catalog, kind string) []string {
	if kind == tableKind {
		return c.TableIDs()
	}
	return c.IDs(kind)
}

func writeKinds(w io.Writer, f catalogFlags, c *catalog.Catalog) error {
	var kinds []counted
	for _, kind := range append(catalog.Kinds[:len(catalog.Kinds):len(catalog.Kinds)], tableKind) {
		kinds = append(kinds, counted{kind, len(idsOf(c, kind))})
	}
	if f.format == "json" {
		return writeJSON(w, kinds)
	}
	for _, k := range kinds {
		if _, err := fmt.Fprintf(w, "%-12s %4d\n", k.Kind, k.Count); err != nil {
			return err
		}
	}
	return nil
}

func writeEntries(w io.Writer, f catalogFlags, c *catalog.Catalog, kind string) error {
	entries := []listed{}
	for _, id := range idsOf(c, kind) {
		name, err := titleOf(c, kind, id)
		if err != nil {
			return err
		}
		entries = append(entries, listed{kind, id, name})
	}
	if f.format == "json" {
		return writeJSON(w, entries)
	}
	t := tabwriter.NewWriter(w, 0, 8, 2, ' ', 0)
	for _, e := range entries {
		fmt.Fprintf(t, "%s\t%s\n", e.ID, e.Name)
	}
	return t.Flush()
}

func titleOf(c *catalog.Catalog, kind, id string) (string, error) {
	if kind != tableKind {
		return c.Title(kind, id)
	}
	t, err := c.Table(id)
	if err != nil {
		return "", err
	}
	return t.Title, nil
}
