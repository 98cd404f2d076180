package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

var schemaNames = []string{"sheet", "facts", "verdict"}

func newSchema(s streams) *cobra.Command {
	return &cobra.Command{
		Use:   "schema sheet|facts|verdict",
		Short: "Print the JSON Schema of a line sheet, of the facts or of a verdict",
		Long: `Print a JSON Schema (draft 2020-12). With the one of the sheet an editor completes keys and words, explains them and
marks slips while a sheet is written. Most editors find it by a first line in the sheet such as

  # yaml-language-server: $schema=./sheet.schema.json

The schema knows the form of a value, not whether the sheet makes sense: "check" has the last word.`,
		Example:   "  lineworthy schema sheet > sheet.schema.json",
		Args:      cobra.ExactArgs(1),
		ValidArgs: schemaNames,
		RunE: func(_ *cobra.Command, args []string) error {
			text, err := schemaOf(args[0])
			if err != nil {
				return err
			}
			_, err = s.out.Write(text)
			return err
		},
	}
}

func schemaOf(name string) ([]byte, error) {
	switch i := slices.Index(schemaNames, name); i {
	case 0:
		return sheet.JSONSchema()
	case 1:
		return facts.JSONSchema(), nil
	case 2:
		return report.VerdictSchema(), nil
	}
	return nil, usage(fmt.Errorf("there is no schema of %q: ask for one of %s", name, strings.Join(schemaNames, ", ")))
}
