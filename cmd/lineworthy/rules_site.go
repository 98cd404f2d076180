package main

import (
	"context"
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"lineworthy/rules"
)

func newRulesTest(s streams) *cobra.Command {
	return &cobra.Command{
		Use:   "test DIR",
		Short: "Check the rules of a site and run the tests beside them",
		Long: `Check the rules and limits of a site as --rules does, run the tests beside each rule, and say which
lines of the rules no test reaches. A rule stands in DIR/AREA/FAULT/rule.rego and its tests in
rule_test.rego beside it; lineworthy new rule --site writes both to start from.

The exit code is 2 if a rule is refused, a test fails, or a line of a rule is reached by no test.`,
		Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error { return runRulesTest(c.Context(), s, args[0]) },
	}
}

func runRulesTest(ctx context.Context, s streams, dir string) error {
	set, err := rules.Load()
	if err != nil {
		return err
	}
	done, err := set.TestSite(ctx, dir)
	if err != nil {
		return ofSite(err)
	}
	failed := 0
	for _, t := range done.Cases {
		if !t.Pass {
			failed++
			fmt.Fprintf(s.out, "%s: FAIL %s %s %s\n", t.Place, t.Name, t.Note, t.Why)
		}
	}
	for _, p := range done.Unreached {
		fmt.Fprintln(s.out, p)
	}
	fmt.Fprintf(s.out, "%d cases, %d failed, %d places that no test reaches\n", len(done.Cases), failed, len(done.Unreached))
	if failed > 0 || len(done.Unreached) > 0 {
		return outcome(exitBadInput)
	}
	return nil
}

// rulesWith are the rules of the program, and those of a site if a folder is named.
func rulesWith(dir string) (rules.Set, error) {
	set, err := rules.Load()
	if err != nil || dir == "" {
		return set, err
	}
	set, err = set.WithSite(dir)
	return set, ofSite(err)
}

// ofSite makes a fault of the site's rules one of the input: it is not the tool that is broken.
func ofSite(err error) error {
	var wrong *rules.SiteError
	if err == nil {
		return nil
	}
	if errors.As(err, &wrong) {
		return usage(fmt.Errorf("the rules of the site are refused, and nothing is judged:\n%w", err))
	}
	return usage(err)
}
