package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"

	"github.com/spf13/cobra"

	"lineworthy/check/report"
	"lineworthy/check/suggest"
)

// suggestFlags are the choices of the suggest command.
type suggestFlags struct {
	part, stock, format, write, asOf, site, rules string
	limit                                         int
}

func newSuggest(s streams) *cobra.Command {
	var f suggestFlags
	cmd := &cobra.Command{
		Use:   "suggest SHEET",
		Short: "Look for parts in the catalog that would make a line fit, or fitter",
		Long: `Try other hoses, ends, seals and bodies from the catalog in the places that something stands against, also several
together, add the relief devices that a line lacks, and judge every changed sheet by the rules. The best are shown:
by verdict and worst margin, then by how little is changed, then by how well their values are known, each with what
it still needs. Where nothing in the catalog does, and where the cure is no part at all, that is said.

A suggestion is to be engineered and confirmed by a competent person. Exit code 0 when the line is fit or
conditional or a suggestion makes it so, else 3 for unfit and 4 for unproven.`,
		Example: "  lineworthy suggest line.yaml\n  lineworthy suggest line.yaml --part H1 --stock stock.yaml --write proposals",
		Args:    cobra.ExactArgs(1),
		RunE:    func(c *cobra.Command, args []string) error { return runSuggest(c.Context(), s, f, args[0]) },
	}
	cmd.Flags().StringVar(&f.part, "part", "", "change only this part, its ends and its seals")
	cmd.Flags().StringVar(&f.stock, "stock", "", "YAML list of the catalog ids the site keeps; only these are offered")
	cmd.Flags().IntVar(&f.limit, "limit", 3, "how many suggestions to show")
	cmd.Flags().StringVar(&f.format, "format", "text", "text for people or json for machines")
	cmd.Flags().StringVar(&f.write, "write", "", "write each changed sheet into this folder")
	cmd.Flags().StringVar(&f.asOf, "as-of", "", "judge a sheet that states no date for this day, e.g. 2026-11-25 (default today)")
	cmd.Flags().StringVar(&f.site, "catalog", "", "folder with the site's own catalog rows, laid over the built-in ones")
	siteRules(cmd, &f.rules)
	return cmd
}

func runSuggest(ctx context.Context, s streams, f suggestFlags, path string) error {
	if f.format != "text" && f.format != "json" {
		return usage(fmt.Errorf("--format %s: want text or json", f.format))
	}
	if f.limit < 1 {
		return usage(fmt.Errorf("--limit %d: want 1 or more", f.limit))
	}
	r, err := suggestions(ctx, f, path)
	if err != nil {
		return err
	}
	if f.write != "" {
		if err := writeOffers(s, f.write, r); err != nil {
			return err
		}
	}
	show := suggest.Text
	if f.format == "json" {
		show = suggest.JSON
	}
	if err := show(s.out, r); err != nil {
		return err
	}
	switch {
	case r.AnyCured:
		return nil
	case r.Now == report.Unproven || len(r.Offers) > 0 && r.Offers[0].Word == report.Unproven:
		return outcome(exitUnproven)
	}
	return outcome(exitUnfit)
}

func suggestions(ctx context.Context, f suggestFlags, path string) (*suggest.Result, error) {
	on, err := day(f.asOf)
	if err != nil {
		return nil, usage(err)
	}
	c, err := catalogFlags{format: "text", site: f.site}.open()
	if err != nil {
		return nil, err
	}
	o := suggest.Options{Part: f.part, Limit: f.limit, AsOf: on}
	if f.stock != "" {
		if o.Stock, err = suggest.ReadStock(f.stock, c); err != nil {
			return nil, usage(err)
		}
	}
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, usage(err)
	}
	engine, err := newEngine(ctx, checkFlags{asOf: f.asOf, site: f.site, rules: f.rules})
	if err != nil {
		return nil, err
	}
	r, err := suggest.For(ctx, engine, c, path, text, o)
	var missing *suggest.PartError
	if errors.As(err, &missing) {
		return nil, usage(err)
	}
	return r, err
}

var notInName = regexp.MustCompile(`[^A-Za-z0-9._-]+`)

// writeOffers writes each changed sheet, named after the line. A file that is there is replaced.
func writeOffers(s streams, dir string, r *suggest.Result) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return usage(err)
	}
	for i, o := range r.Offers {
		path := filepath.Join(dir, fmt.Sprintf("%s-proposal-%d.yaml", notInName.ReplaceAllString(r.Line, "-"), i+1))
		if err := os.WriteFile(path, o.Text, 0o644); err != nil {
			return usage(err)
		}
		fmt.Fprintln(s.err, path)
	}
	return nil
}
