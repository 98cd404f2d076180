package main

import (
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
)

// hit is what the search command writes for machines.
type hit struct {
	listed
	Fits string `json:"fits"`
	By   string `json:"by"`
}

const (
	hitsShown = 20 // more than a screen helps nobody choose
	nearShown = 5
)

func newSearch(s streams) *cobra.Command {
	var f catalogFlags
	return reads(&cobra.Command{
		Use:   "search TERM...",
		Short: "Find entries by id, name, everyday name, CAS number, UN number or standard",
		Long: `Find entries of every kind by id, name, everyday name, CAS number, UN number, standard or document.
The best fit comes first: the whole name, the start of one, all words of it, a misspelling.`,
		Example: "  lineworthy catalog search MEK\n  lineworthy catalog search UN 1017\n  lineworthy catalog search EN 12115",
		Args:    cobra.MinimumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			c, err := f.open()
			if err != nil {
				return err
			}
			return search(s.out, f, c, strings.Join(args, " "))
		},
	}, &f)
}

func search(w io.Writer, f catalogFlags, c *catalog.Catalog, typed string) error {
	found := c.Search(typed)
	if len(found) == 0 {
		return nothing(c, typed)
	}
	if f.format == "json" {
		hits, err := hitsOf(c, found)
		if err != nil {
			return err
		}
		return writeJSON(w, hits)
	}
	hits, err := hitsOf(c, found[:min(len(found), hitsShown)])
	if err != nil {
		return err
	}
	return writeHits(w, hits, len(found)-len(hits))
}

func hitsOf(c *catalog.Catalog, found []catalog.Match) ([]hit, error) {
	var hits []hit
	for _, m := range found {
		name, err := c.Title(m.Kind, m.ID)
		if err != nil {
			return nil, err
		}
		hits = append(hits, hit{listed{one(m.Kind), m.ID, name}, m.Rank.String(), m.By})
	}
	return hits, nil
}

func writeHits(w io.Writer, hits []hit, more int) error {
	t := tabwriter.NewWriter(w, 0, 8, 2, ' ', 0)
	for _, h := range hits {
		fmt.Fprintf(t, "%s\t%s\t%s\t%s\n", h.Kind, h.ID, short(h.Name), h.Fits)
	}
	if err := t.Flush(); err != nil {
		return err
	}
	if more > 0 {
		fmt.Fprintf(w, "and %d more: write more of the name\n", more)
	}
	return nil
}

// short keeps a title to one line of a list.
func short(name string) string {
	if r := []rune(name); len(r) > 60 {
		return string(r[:59]) + "…"
	}
	return name
}

// nothing says what was not found, and what comes nearest.
func nothing(c *catalog.Catalog, typed string) error {
	if catalog.Collective(typed) {
		return usage(fmt.Errorf("%s stands for many substances (not otherwise specified) and so names none: search by name", typed))
	}
	near := c.Nearly(typed, max(2, len(typed)/3))
	if len(near) == 0 {
		return usage(fmt.Errorf("nothing in the catalog is called %q, nor nearly so", typed))
	}
	var names []string
	for _, m := range near[:min(len(near), nearShown)] {
		names = append(names, one(m.Kind)+" "+m.ID)
	}
	return usage(fmt.Errorf("nothing in the catalog is called %q; nearest: %s", typed, strings.Join(names, ", ")))
}
