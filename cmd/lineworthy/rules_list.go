package main

import (
	"fmt"
	"slices"
	"strings"
	"text/tabwriter"

	"github.com/spf13/cobra"

	"lineworthy/rules"
)

func newRulesList(s streams) *cobra.Command {
	var format, area, regime string
	cmd := formatted(&cobra.Command{
		Use:   "list",
		Short: "List the rules, those of one area or those that rest on one law",
		Example: "  lineworthy rules list\n  lineworthy rules list --area isolation\n" +
			"  lineworthy rules list --regime \"29 CFR 1910.111\"",
		Args: cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error {
			if err := badFormat(format); err != nil {
				return err
			}
			all, err := chosen(area, regime)
			if err != nil {
				return err
			}
			if format == "json" {
				return writeJSON(s.out, all)
			}
			t := tabwriter.NewWriter(s.out, 0, 8, 2, ' ', 0)
			for _, r := range all {
				fmt.Fprintf(t, "%s\t%s\t%s\n", r.ID, r.Severity, r.Title)
			}
			return t.Flush()
		},
	}, &format)
	cmd.Flags().StringVar(&area, "area", "", "one of "+strings.Join(rules.Areas(), ", "))
	cmd.Flags().StringVar(&regime, "regime", "", "a law as sheets name it; rules that judge only under it, or rest on it")
	return cmd
}

// chosen are the rules of an area and of a law; empty means all.
func chosen(area, regime string) ([]rules.Rule, error) {
	if area != "" && !slices.Contains(rules.Areas(), area) {
		return nil, usage(fmt.Errorf("--area %s: want one of %s", area, strings.Join(rules.Areas(), ", ")))
	}
	s, err := rules.Load()
	if err != nil {
		return nil, err
	}
	out := []rules.Rule{}
	for _, r := range s.Index() {
		if (area == "" || strings.HasPrefix(r.ID, area+"/")) && (regime == "" || rests(r, regime)) {
			out = append(out, r)
		}
	}
	if len(out) == 0 {
		return nil, usage(fmt.Errorf("no rule judges under %q or rests on it; the laws that rules rest on: lineworthy rules law", regime))
	}
	return out, nil
}

// rests says whether a rule judges only under a law, or cites it.
func rests(r rules.Rule, law string) bool {
	same := func(s string) bool { return strings.EqualFold(s, law) }
	return slices.ContainsFunc(r.Regimes(), same) || slices.ContainsFunc(r.Basis, func(b rules.Basis) bool { return same(b.Document) })
}
