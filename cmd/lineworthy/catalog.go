package main

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
)

// catalogFlags are the choices of the commands that read the catalog.
type catalogFlags struct {
	format, site string
}

func newCatalog(s streams) *cobra.Command {
	cmd := &cobra.Command{
		Use:   "catalog",
		Short: "Look into the catalog of fluids, materials, hoses, connections, seals and sources",
		Long: `Look into the catalog. Every value is shown with the document behind it and with how it is known:
read in the document, read second hand, computed, recalled, or common practice without a source.`,
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	cmd.AddCommand(newList(s), newShow(s), newSearch(s), newLint(s))
	return cmd
}

// reads gives a command the flags of the commands that read the catalog.
func reads(cmd *cobra.Command, f *catalogFlags) *cobra.Command {
	cmd.Flags().StringVar(&f.format, "format", "text", "text for people or json for machines")
	cmd.Flags().StringVar(&f.site, "catalog", "", "folder with the site's own catalog rows, laid over the built-in ones")
	return cmd
}

// open returns the catalog with the site's rows over it.
func (f catalogFlags) open() (*catalog.Catalog, error) {
	if f.format != "text" && f.format != "json" {
		return nil, usage(fmt.Errorf("--format %s: want text or json", f.format))
	}
	if f.site == "" {
		return catalog.Open(), nil
	}
	c, err := catalog.Open().Overlay(f.site)
	if err != nil {
		return nil, usage(err)
	}
	return c, nil
}

// tableKind is shown and listed like the kinds of entry, but its entries have no other names.
const tableKind = "tables"

// kindOf finds the kind a person means: fluid and fluids are one.
func kindOf(word string) (kind string, ok bool) {
	for _, k := range append(catalog.Kinds[:len(catalog.Kinds):len(catalog.Kinds)], tableKind) {
		if w := strings.ToLower(word); w == k || w == one(k) {
			return k, true
		}
	}
	return "", false
}

// one is the word for one entry of the kind.
func one(kind string) string { return strings.TrimSuffix(kind, "s") }

func unknownKind(word string) error {
	return usage(fmt.Errorf("%q is no kind of entry: want one of %s or %s", word, strings.Join(catalog.Kinds, ", "), tableKind))
}

func writeJSON(w io.Writer, value any) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(value)
}
