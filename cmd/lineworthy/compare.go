package main

import (
	"bytes"
	"context"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/compare"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

var compareFormats = []string{"text", "json", "markdown"}

func newCompare(s streams) *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use:   "compare OLD NEW",
		Short: "Review a change: what differs between two sheets or two stored verdicts, and what it does to the line",
		Long: `Compare two line sheets by meaning and judge both: which parts, materials, ratings, classes, connections, seals,
relief sets, fluids, temperatures and runs differ, whether that is a replacement in kind under 29 CFR 1910.119(l)(1),
which findings appear, worsen, ease or clear with their margins, and what the change record must hold. Order of text,
units and comments make no difference. Whether a change needs a record is for the site to decide.

Two verdicts that "check --format json" wrote (files that end in .json) are compared as they stand: which sheet, rules
and catalog rows differ between them, and what that flipped.

Exit codes: 0 the new line is fit or conditional, 2 bad input, 3 it is unfit, 4 it is unproven.`,
		Example: "  lineworthy compare approved.yaml proposed.yaml\n  lineworthy compare last-year.json today.json --format markdown",
		Args:    cobra.ExactArgs(2),
		RunE:    func(c *cobra.Command, args []string) error { return runCompare(c.Context(), s, f, args[0], args[1]) },
	}
	cmd.Flags().StringVar(&f.format, "format", "text", strings.Join(compareFormats, ", "))
	cmd.Flags().BoolVar(&f.full, "full", false, "list every margin that differs, findings of every kind, and whole digests")
	cmd.Flags().BoolVar(&f.strict, "strict", false, "end with exit code 4 when anything is worse, whatever the new verdict")
	cmd.Flags().IntVar(&f.width, "width", 0, "width of the text in characters (default: the terminal, else 100)")
	common(cmd, &f)
	siteRules(cmd, &f.rules)
	return cmd
}

func runCompare(ctx context.Context, s streams, f checkFlags, before, after string) error {
	if !slices.Contains(compareFormats, f.format) {
		return usage(fmt.Errorf("--format %s: want one of %s", f.format, strings.Join(compareFormats, ", ")))
	}
	r, err := reviewOf(ctx, s, f, before, after)
	if err != nil {
		return err
	}
	if err := writeReview(s, f, r); err != nil {
		return err
	}
	code := worst([]*report.Verdict{{Word: r.New.Word}}, false)
	if code == exitFit && f.strict && len(r.Worse) > 0 {
		code = exitUnproven
	}
	if code != exitFit {
		return outcome(code)
	}
	return nil
}

func reviewOf(ctx context.Context, s streams, f checkFlags, before, after string) (*compare.Review, error) {
	isVerdict := func(path string) bool { return strings.EqualFold(filepath.Ext(path), ".json") }
	switch {
	case isVerdict(before) && isVerdict(after):
		vs, err := stored(s.in, []string{before, after})
		if err != nil {
			return nil, usage(err)
		}
		return compare.Verdicts(vs[0], vs[1]), nil
	case isVerdict(before) != isVerdict(after):
		return nil, usage(fmt.Errorf("%s and %s are not of one kind: give two sheets, or two stored verdicts (.json)", before, after))
	}
	return compareSheets(ctx, f, before, after)
}

func compareSheets(ctx context.Context, f checkFlags, before, after string) (*compare.Review, error) {
	e, err := newEngine(ctx, f)
	if err != nil {
		return nil, err
	}
	c, err := catalogOf(f.site)
	if err != nil {
		return nil, err
	}
	var sides [2]compare.Input
	var problems sheet.Problems
	for i, path := range []string{before, after} {
		sides[i], err = compareSide(ctx, e, path)
		if p, ok := asProblems(err); ok {
			problems = append(problems, p...)
		} else if err != nil {
			return nil, err
		}
	}
	if len(problems) > 0 {
		return nil, problems
	}
	return compare.Sheets(sides[0], sides[1], c), nil
}

func compareSide(ctx context.Context, e *check.Engine, path string) (in compare.Input, err error) {
	if in.Sheet, err = sheet.Read(path); err != nil {
		return in, err
	}
	if in.Facts, err = e.Facts(in.Sheet); err != nil {
		return in, err
	}
	in.Verdict, err = e.Check(ctx, in.Sheet)
	return in, err
}

func catalogOf(site string) (*catalog.Catalog, error) {
	return catalogFlags{format: "text", site: site}.open()
}

func writeReview(s streams, f checkFlags, r *compare.Review) error {
	var b bytes.Buffer
	if f.format == "json" {
		if err := writeJSON(&b, r); err != nil {
			return err
		}
	} else {
		o := compare.Options{Options: report.Options{Width: f.width, Full: f.full, Colour: colour(s.out)}, Markdown: f.format == "markdown"}
		if o.Width == 0 {
			o.Width = width(s.out)
		}
		b.WriteString(r.Text(o))
	}
	_, err := b.WriteTo(s.out)
	return err
}
