package main

import "github.com/spf13/cobra"

func newRegister(s streams) *cobra.Command {
	cmd := &cobra.Command{
		Use:   "register",
		Short: "Work with the records of many lines",
		Args:  cobra.NoArgs,
		RunE:  func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	cmd.AddCommand(newRegisterVerify(s))
	return cmd
}
