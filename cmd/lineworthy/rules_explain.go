package main

import (
	"cmp"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/rules"
)

func newRulesExplain(s streams) *cobra.Command {
	return &cobra.Command{
		Use:     "explain ID",
		Short:   "Explain one rule: when it fires, why, on what it rests, what to do and what it needs to know",
		Example: "  lineworthy rules explain isolation/same_coupling_in_reach",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			r, err := oneRule(args[0])
			if err != nil {
				return err
			}
			example, err := r.Example()
			if err != nil {
				return err
			}
			explain(s.out, r, example)
			return nil
		},
	}
}

func explain(w io.Writer, r rules.Rule, example string) {
	block := func(heading string, texts ...string) {
		fmt.Fprintf(w, "\n%s\n", heading)
		for _, t := range texts {
			indented(w, t)
		}
	}
	fmt.Fprintf(w, "%s (%s)\n", r.Title, r.ID)
	block("When it fires", "It looks at "+r.LooksAt()+under(r)+".", r.Effect())
	block("Why", r.Description)
	block("What it says, for example", example)
	block("What to do", r.Action)
	var basis []string
	for _, b := range r.Basis {
		basis = append(basis, citation(b))
	}
	block("On what it rests", basis...)
	block("What it needs to know", needed(r)...)
	fmt.Fprintln(w, "\nA screening aid: local codes, the maker's data and licensed practice go first. Check the current code.")
}

// under are the conditions of the rule, in a sentence.
func under(r rules.Rule) string {
	if len(r.Scope) == 0 {
		return ""
	}
	return ", on these conditions: " + strings.Join(r.Where(), "; ")
}

func needed(r rules.Rule) []string {
	if len(r.Needs) == 0 {
		return []string{"Nothing beyond what every sheet holds."}
	}
	out := []string{"Without one of these the line is unproven, never fit:"}
	if r.Severity == "note" {
		out[0] = "Without one of these it says nothing:"
	}
	for _, n := range r.Asks() {
		_, key, _ := strings.Cut(n.Fact, ".")
		out = append(out, "- "+cmp.Or(n.Ask, strings.ReplaceAll(key, "_", " "))+" ("+n.Fact+")")
	}
	return out
}
