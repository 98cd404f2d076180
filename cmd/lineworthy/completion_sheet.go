package main

import (
	"github.com/spf13/cobra"

	"lineworthy/check/sheet"
)

// explainArgs offers sheets, and behind a sheet that can be read its parts, vessels, fluids and the rules.
func explainArgs(c *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
	if len(args) == 0 {
		return []string{"yaml", "yml"}, cobra.ShellCompDirectiveFilterFileExt
	}
	if len(args) > 1 {
		return nil, cobra.ShellCompDirectiveNoFileComp
	}
	out, how := ruleArgs(c, nil, typed)
	line, err := sheet.Read(args[0])
	if err != nil {
		return out, how
	}
	return append(starting(thingsOf(line), typed), out...), how
}

func thingsOf(l *sheet.Line) []string {
	var out []string
	for _, r := range l.Runs {
		for _, p := range r.V.Parts {
			out = append(out, p.ID.V+"\t"+p.Kind.V)
		}
	}
	for _, v := range l.Vessels {
		out = append(out, v.Key+"\tvessel")
	}
	for _, f := range l.Fluids {
		out = append(out, f.Key+"\tfluid")
	}
	return out
}
