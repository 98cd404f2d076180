package main

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/rules"
)

func newRules(s streams) *cobra.Command {
	cmd := &cobra.Command{
		Use:   "rules",
		Short: "Look into the rules a line is judged by, and the laws behind them",
		Long: `Look into the rules. Each one finds one fault, says on which document it rests and how that is known,
and what to do. The laws were mostly read in an older annual edition: check the current code.`,
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	cmd.AddCommand(newRulesList(s), newRulesShow(s), newRulesExplain(s), newRulesLaw(s), newRulesTest(s))
	return cmd
}

// formatted gives a command the choice between text and JSON.
func formatted(cmd *cobra.Command, format *string) *cobra.Command {
	cmd.Flags().StringVar(format, "format", "text", "text for people or json for machines")
	return cmd
}

func badFormat(format string) error {
	if format != "text" && format != "json" {
		return usage(fmt.Errorf("--format %s: want text or json", format))
	}
	return nil
}

// oneRule finds the rule that is meant: by its id, or by the fault alone where no other area has one of that name.
func oneRule(typed string) (rules.Rule, error) {
	s, err := rules.Load()
	if err != nil {
		return rules.Rule{}, err
	}
	want := strings.ToLower(strings.ReplaceAll(strings.Trim(typed, "/ "), " ", "_"))
	if r, ok := s.Rule(want); ok {
		return r, nil
	}
	var near []rules.Rule
	for _, r := range s.Index() {
		if strings.HasSuffix(r.ID, "/"+want) {
			near = append(near, r)
		}
	}
	if len(near) == 1 {
		return near[0], nil
	}
	hint := ""
	if near := nearestRules(s, want); len(near) > 0 {
		hint = "; nearest: " + strings.Join(near, ", ")
	}
	return rules.Rule{}, usage(fmt.Errorf("there is no rule %q%s; all of them: lineworthy rules list", typed, hint))
}

// nearestRules are at most three rules, those whose names share the most words with what was typed
// and are as long.
func nearestRules(s rules.Set, typed string) []string {
	words := strings.FieldsFunc(typed, func(c rune) bool { return c == '/' || c == '_' || c == '-' })
	shared := func(r rules.Rule) int {
		n := 0
		for _, w := range words {
			if strings.Contains(r.ID, w) {
				n += len(w)
			}
		}
		return n
	}
	longer := func(r rules.Rule) int { return max(len(r.ID)-len(typed), len(typed)-len(r.ID)) }
	all := slices.Clone(s.Index())
	slices.SortStableFunc(all, func(a, b rules.Rule) int {
		return cmp.Or(cmp.Compare(shared(b), shared(a)), cmp.Compare(longer(a), longer(b)))
	})
	var out []string
	for _, r := range all[:min(3, len(all))] {
		if shared(r) > 0 {
			out = append(out, r.ID)
		}
	}
	return out
}

// indented writes running text, folded, behind spaces.
func indented(w io.Writer, text string) {
	for _, line := range folded(text) {
		fmt.Fprintf(w, "  %s\n", line)
	}
}

// citation is a place in a document, with its edition and how it is known.
func citation(b rules.Basis) string {
	place := strings.TrimSpace(b.Document + " " + b.Clause)
	if b.Edition != "" {
		place += ", " + b.Edition
	}
	if b.Standing == "practice" {
		return "common practice, no source"
	}
	return place + ": " + knownAs[b.Standing]
}

// knownAs says how a basis is known, for a person.
var knownAs = map[string]string{
	"published": "read in the document", "restated": "read second hand", "computed": "computed from the documents named",
	"recalled": "recalled, not looked up", "practice": "common practice, no source",
}
