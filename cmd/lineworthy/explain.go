package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	why "lineworthy/check/explain"
	"lineworthy/check/report"
)

var explainFormats = []string{"text", "json", "markdown"}

func newExplain(s streams) *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use:   "explain SHEET [FINDING|PART]",
		Short: "Explain a finding from the sheet to the rule, or why a part is fine",
		Long: `Explain one finding: the values of the sheet with their lines, the entries of the catalog with their documents, the
numbers and how they were worked out, and the rule with its basis. A finding is named by its number in the report or by
its rule. For a part, a vessel or a fluid: what was judged of it, with what it has, needs and has to spare.

Without a name the command lists what can be explained. The exit code is 0 whatever the verdict.`,
		Example: "  lineworthy explain line.yaml\n  lineworthy explain line.yaml 1\n  lineworthy explain line.yaml pressure/rating_below_demand\n  lineworthy explain line.yaml H1",
		Args:    cobra.RangeArgs(1, 2),
		RunE:    func(c *cobra.Command, args []string) error { return runExplain(c.Context(), s, f, args) },
	}
	cmd.Flags().StringVar(&f.format, "format", "text", strings.Join(explainFormats, ", "))
	cmd.Flags().IntVar(&f.width, "width", 0, "width of the text in characters (default: the terminal, else 100)")
	common(cmd, &f)
	siteRules(cmd, &f.rules)
	return cmd
}

func runExplain(ctx context.Context, s streams, f checkFlags, args []string) error {
	if !slices.Contains(explainFormats, f.format) {
		return usage(fmt.Errorf("--format %s: want one of %s", f.format, strings.Join(explainFormats, ", ")))
	}
	in, err := explainInput(ctx, f, args[0])
	if err != nil {
		return err
	}
	o := report.Options{Width: f.width, Colour: colour(s.out)}
	if o.Width == 0 {
		o.Width = width(s.out)
	}
	if len(args) == 1 {
		return writeTopics(s.out, in, f.format, o)
	}
	a, err := why.About(in, args[1])
	var unknown *why.Unknown
	if errors.As(err, &unknown) {
		return usage(err)
	}
	if err != nil {
		return err
	}
	if f.format == "json" {
		return writeJSON(s.out, a)
	}
	_, err = io.WriteString(s.out, a.Text(o, f.format == "markdown"))
	return err
}

func writeTopics(w io.Writer, in why.Input, format string, o report.Options) error {
	topics := why.Topics(in)
	if format == "json" {
		return writeJSON(w, topics)
	}
	_, err := io.WriteString(w, why.TopicsText(in.Verdict, topics, o, format == "markdown"))
	return err
}

func explainInput(ctx context.Context, f checkFlags, path string) (in why.Input, err error) {
	e, err := newEngine(ctx, f)
	if err != nil {
		return in, err
	}
	side, err := compareSide(ctx, e, path)
	if err != nil {
		return in, err
	}
	in = why.Input{Sheet: side.Sheet, Facts: side.Facts, Verdict: side.Verdict}
	if in.Catalog, err = catalogOf(f.site); err != nil {
		return in, err
	}
	in.Rules, err = rulesWith(f.rules)
	return in, err
}
