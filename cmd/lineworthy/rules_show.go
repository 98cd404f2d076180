package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/rules"
)

// shownRule is a rule for machines, with an example of what it says.
type shownRule struct {
	rules.Rule
	Example string `json:"example"`
}

func newRulesShow(s streams) *cobra.Command {
	var format string
	return formatted(&cobra.Command{
		Use:     "show ID",
		Short:   "Show what one rule says of itself: subject, scope, needs, message and basis",
		Example: "  lineworthy rules show pressure/below_ammonia_law",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if err := badFormat(format); err != nil {
				return err
			}
			r, err := oneRule(args[0])
			if err != nil {
				return err
			}
			example, err := r.Example()
			if err != nil {
				return err
			}
			if format == "json" {
				return writeJSON(s.out, shownRule{r, example})
			}
			showRule(s.out, r, example)
			return nil
		},
	}, &format)
}

func showRule(w io.Writer, r rules.Rule, example string) {
	fmt.Fprintf(w, "%s\n%s\n\n", r.ID, r.Title)
	for _, row := range [][2]string{
		{"severity", r.Severity}, {"subject", r.Subject}, {"scope", strings.Join(r.Scope, ", ")}, {"needs", strings.Join(r.Needs, ", ")},
		{"message", r.Message}, {"example", example}, {"action", r.Action},
	} {
		label := row[0]
		for _, line := range folded(row[1]) {
			if line != "" {
				fmt.Fprintf(w, "  %-9s %s\n", label, line)
			}
			label = ""
		}
	}
	for _, b := range r.Basis {
		fmt.Fprintf(w, "  %-9s %s\n", "basis", citation(b))
	}
}
