package main

import (
	"github.com/spf13/cobra"

	"lineworthy/check/sheet"
)

func newFacts(s streams) *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use:   "facts SHEET",
		Short: "Print what the rules get to see of a line, as JSON",
		Long: `Print the facts worked out from a line sheet and the catalog: integers in SI units, words and
answers, and for every fact that is not known why it is missing and who can supply it. A stock
Open Policy Agent judges the same facts with the same rules to the same findings.`,
		Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			e, err := newEngine(c.Context(), f)
			if err != nil {
				return err
			}
			line, err := sheet.Read(args[0])
			if err != nil {
				return err
			}
			facts, err := e.Facts(line)
			if err != nil {
				return err
			}
			text, err := facts.JSON()
			if err != nil {
				return err
			}
			_, err = s.out.Write(append(text, '\n'))
			return err
		},
	}
	common(cmd, &f)
	return cmd
}
