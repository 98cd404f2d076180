package main

import (
	"errors"
	"fmt"
	"io/fs"

	"github.com/spf13/cobra"

	"lineworthy/check/sheet"
)

func newNew(s streams) *cobra.Command {
	cmd := &cobra.Command{
		Use:   "new",
		Short: "Write a commented template to start from",
		Args:  cobra.NoArgs,
		RunE:  func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	cmd.AddCommand(&cobra.Command{
		Use:   "sheet [FILE]",
		Short: "Write a commented line sheet to FILE, or to the screen",
		Args:  cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 {
				_, err := s.out.Write(sheet.Template())
				return err
			}
			return writeNew(s, args[0], sheet.Template())
		},
	})
	cmd.AddCommand(newKey(s), newRule(s))
	cmd.AddCommand(newEntries(s)...)
	return cmd
}

// writeNew never overwrites: a sheet somebody filled in is worth more than a template.
func writeNew(s streams, path string, text []byte) error {
	err := create(path, text, 0o644)
	if errors.Is(err, fs.ErrExist) {
		return usage(fmt.Errorf("%s is there already and is left as it is: name another file", path))
	}
	if err != nil {
		return usage(err)
	}
	fmt.Fprintf(s.err, "wrote %s\n", path)
	return nil
}
