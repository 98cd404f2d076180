package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
)

func newShow(s streams) *cobra.Command {
	var f catalogFlags
	return reads(&cobra.Command{
		Use:   "show [KIND] NAME",
		Short: "Show one entry with its sources and how each value is known",
		Long: `Show one entry as a person reads it: every value with its unit, its document and how it is known.
A name that fits several entries is refused with the choices.`,
		Example: "  lineworthy catalog show butanone\n  lineworthy catalog show material nitrile\n  lineworthy catalog show --format json hose en-12115-sd",
		Args:    cobra.MinimumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			c, err := f.open()
			if err != nil {
				return err
			}
			kind, id, err := pick(c, args)
			if err != nil {
				return err
			}
			if f.format == "json" {
				return showJSON(s.out, c, kind, id)
			}
			p := newPage(c)
			if err := p.entry(kind, id); err != nil {
				return err
			}
			return p.finish(s.out)
		},
	}, &f)
}

// pick finds the one entry that is meant.
func pick(c *catalog.Catalog, args []string) (kind, id string, err error) {
	if kind, ok := kindOf(args[0]); ok && len(args) > 1 {
		id, err := idOf(c, kind, strings.Join(args[1:], " "))
		return kind, id, err
	}
	return pickAny(c, strings.Join(args, " "))
}

func idOf(c *catalog.Catalog, kind, name string) (string, error) {
	if kind == tableKind {
		if !slices.Contains(c.TableIDs(), name) {
			return "", &catalog.NotFound{Kind: kind, Name: name}
		}
		return name, nil
	}
	return c.ID(kind, name)
}

// pickAny asks every kind for the name. Documents come last: a standard and its hose often share a name.
func pickAny(c *catalog.Catalog, name string) (string, string, error) {
	var found []hit
	for _, m := range c.Search(name) {
		if m.Rank == catalog.Exact && !(m.Kind == catalog.Sources && len(found) > 0) {
			found = append(found, hit{listed: listed{m.Kind, m.ID, ""}})
		}
	}
	if own := ownID(c, name, found); own != nil {
		found = own
	}
	switch {
	case len(found) == 1:
		return found[0].Kind, found[0].ID, nil
	case len(found) > 1:
		return "", "", several(name, found)
	case slices.Contains(c.TableIDs(), name):
		return tableKind, name, nil
	}
	return "", "", nothing(c, name)
}

// ownID keeps the entry whose id was typed: within a kind an id wins over another entry's other name.
func ownID(c *catalog.Catalog, name string, found []hit) []hit {
	var own []hit
	for _, kind := range catalog.Kinds {
		in := func(h hit) bool { return h.Kind == kind }
		if !slices.ContainsFunc(found, in) {
			continue
		}
		if id, err := c.ID(kind, name); err == nil {
			own = append(own, hit{listed: listed{kind, id, ""}})
			continue
		}
		return nil
	}
	return own
}

func several(name string, found []hit) error {
	var choices []string
	for _, h := range found {
		choices = append(choices, "\n  lineworthy catalog show "+one(h.Kind)+" "+h.ID)
	}
	return usage(fmt.Errorf("%q may mean any of these; show one of them:%s", name, strings.Join(choices, "")))
}

// entry lays out one entry of any kind.
func (p *page) entry(kind, id string) error {
	switch kind {
	case catalog.Fluids:
		return laid(p.fluid)(p.cat.Fluid(id))
	case catalog.Materials:
		return laid(p.material)(p.cat.Material(id))
	case catalog.Hoses:
		return laid(p.hose)(p.cat.Hose(id))
	case catalog.Connections:
		return laid(p.connection)(p.cat.Connection(id))
	case catalog.Seals:
		return laid(p.seal)(p.cat.Seal(id))
	case catalog.Sources:
		return laid(p.source)(p.cat.Source(id))
	}
	return laid(p.table)(p.cat.Table(id))
}

// laid calls the layout of an entry unless it could not be read.
func laid[T any](layout func(*T) error) func(*T, error) error {
	return func(v *T, err error) error {
		if err != nil {
			return err
		}
		return layout(v)
	}
}
