package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
	"lineworthy/check/window"
)

// checkFlags are the choices of the check and facts commands.
type checkFlags struct {
	format, asOf string
	site, rules  string
	strict, full bool
	sensitivity  bool
	width        int
}

func newCheck(s streams) *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use:   "check SHEET...",
		Short: "Judge one or more line sheets",
		Long: `Judge one or more line sheets and say, with cited reasons, whether each line is fit, conditional,
unproven or unfit. Every sheet is judged even if another one is faulty.`,
		Example: "  lineworthy check line.yaml\n  lineworthy check --format json line.yaml",
		Args:    cobra.MinimumNArgs(1),
		RunE:    func(c *cobra.Command, args []string) error { return runCheck(c.Context(), s, f, args) },
	}
	cmd.Flags().StringVar(&f.format, "format", "text", "report format: "+strings.Join(report.Formats(), ", "))
	cmd.Flags().BoolVar(&f.strict, "strict", false, "end with exit code 4 for a conditional line too")
	cmd.Flags().BoolVar(&f.full, "full", false, "list everything that was judged, and full digests")
	cmd.Flags().BoolVar(&f.sensitivity, "sensitivity", false, "say for each number of the sheet which nearest value changes the answer")
	cmd.Flags().IntVar(&f.width, "width", 0, "width of the text report in characters (default: the terminal, else 100)")
	common(cmd, &f)
	siteRules(cmd, &f.rules)
	return cmd
}

func siteRules(cmd *cobra.Command, dir *string) {
	cmd.Flags().StringVar(dir, "rules", "", "folder with rules and limits of the site, which can only find more")
}

func common(cmd *cobra.Command, f *checkFlags) {
	cmd.Flags().StringVar(&f.asOf, "as-of", "", "judge a sheet that states no date for this day, e.g. 2026-11-25 (default today)")
	cmd.Flags().StringVar(&f.site, "catalog", "", "folder with the site's own catalog rows, laid over the built-in ones")
}

func runCheck(ctx context.Context, s streams, f checkFlags, paths []string) error {
	if _, err := report.For(f.format); err != nil {
		return usage(err)
	}
	if f.format == "html" && len(paths) > 1 {
		return usage(errors.New("an html page is about one line: give one sheet"))
	}
	engine, err := newEngine(ctx, f)
	if err != nil {
		return err
	}
	verdicts, bad := judgeAll(ctx, engine, f, paths)
	if len(verdicts) > 0 {
		if err := writeAll(s.out, verdicts, f); err != nil {
			return err
		}
	}
	if bad != nil {
		return bad
	}
	if code := worst(verdicts, f.strict); code != exitFit {
		return outcome(code)
	}
	return nil
}

func newEngine(ctx context.Context, f checkFlags) (*check.Engine, error) {
	asOf, err := day(f.asOf)
	if err != nil {
		return nil, usage(err)
	}
	cat := catalog.Open()
	if f.site != "" {
		if cat, err = cat.Overlay(f.site); err != nil {
			return nil, usage(err)
		}
	}
	set, err := rulesWith(f.rules)
	if err != nil {
		return nil, err
	}
	return check.New(ctx, check.Options{Catalog: cat, AsOf: asOf, Version: version(), Rules: &set})
}

func day(text string) (units.Date, error) {
	if text == "" {
		return today(), nil
	}
	d, err := units.ParseDate(text)
	if err == nil && d.MonthOnly {
		err = fmt.Errorf("--as-of %s: write the day too, like 2026-11-25", text)
	}
	return d, err
}

// judgeAll judges every sheet it can read. A faulty sheet does not stop the rest; a fault in the tool does.
func judgeAll(ctx context.Context, e *check.Engine, f checkFlags, paths []string) ([]*report.Verdict, error) {
	var verdicts []*report.Verdict
	var problems sheet.Problems
	for _, path := range paths {
		v, err := judge(ctx, e, f, path)
		var p sheet.Problems
		switch {
		case errors.As(err, &p):
			problems = append(problems, p...)
		case err != nil:
			return verdicts, err
		default:
			verdicts = append(verdicts, v)
		}
	}
	if len(problems) > 0 {
		return verdicts, problems
	}
	return verdicts, nil
}

func judge(ctx context.Context, e *check.Engine, f checkFlags, path string) (*report.Verdict, error) {
	line, err := sheet.Read(path)
	if err != nil {
		return nil, err
	}
	v, err := e.Check(ctx, line)
	if err == nil && f.sensitivity {
		v.Flips, err = e.Flips(ctx, line, v.Word)
	}
	if err == nil && slices.Contains(drawnIn, f.format) {
		v.Region, err = regionOf(line, f)
	}
	return v, err
}

// drawnIn are the formats that carry the region of pressure and temperature: the page draws it, the document stores it.
var drawnIn = []string{"html", "json"}

func regionOf(line *sheet.Line, f checkFlags) (*report.Region, error) {
	asOf, err := day(f.asOf)
	if err != nil {
		return nil, usage(err)
	}
	cat, err := catalogOf(f.site)
	if err != nil {
		return nil, err
	}
	r, err := window.Of(line, cat, asOf)
	if err != nil {
		return nil, err
	}
	return r.Brief(), nil
}

func writeAll(w io.Writer, verdicts []*report.Verdict, f checkFlags) error {
	o := report.Options{Width: f.width, Full: f.full, Colour: colour(w)}
	if o.Width == 0 {
		o.Width = width(w)
	}
	if err := report.All(w, f.format, verdicts, o); err != nil {
		return err
	}
	if len(verdicts) > 1 && f.format == "text" {
		fmt.Fprintln(w)
		return report.Summary(w, verdicts, o)
	}
	return nil
}
