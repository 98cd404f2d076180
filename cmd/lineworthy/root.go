package main

import (
	"context"
	"io"
	"runtime/debug"

	"github.com/spf13/cobra"
)

// streams are what the program reads and writes, so that tests need no terminal.
type streams struct {
	in       io.Reader
	out, err io.Writer
}

// run carries out one command line and returns the exit code.
func run(ctx context.Context, args []string, s streams) int {
	root := newRoot(s)
	root.SetArgs(args)
	return exitCode(root.ExecuteContext(ctx), s.err)
}

func newRoot(s streams) *cobra.Command {
	root := &cobra.Command{
		Use:   "lineworthy",
		Short: "Judge a pressurised transfer line before the first valve opens",
		Long: `lineworthy reads a line sheet (YAML) that describes a pressurised transfer line: its fluids,
pressures, temperatures and every part, end and seal. It answers fit, conditional, unproven or unfit,
with cited reasons. It is a screening aid: it does not replace the manufacturer's data, local codes
or licensed practice.

Exit codes: 0 fit or conditional, 1 fault in the tool, 2 bad input or usage, 3 unfit, 4 unproven.`,
		Version:           version(),
		SilenceErrors:     true,
		SilenceUsage:      true,
		DisableAutoGenTag: true,
	}
	root.SetIn(s.in)
	root.SetOut(s.out)
	root.SetErr(s.err)
	root.SetFlagErrorFunc(func(_ *cobra.Command, err error) error { return usage(err) })
	root.AddCommand(newCheck(s), newFacts(s), newReport(s), newSign(s), newVerify(s), newRegister(s), newCatalog(s), newNew(s))
	root.AddCommand(newSuggest(s))
	root.AddCommand(newWindow(s), newRules(s))
	root.AddCommand(newCompare(s), newExplain(s), newSchema(s), newMan(s))
	root.AddCommand(newBatch(s), newBundle(s))
	root.AddCommand(newInspect(s))
	root.AddCommand(newPlan(s))
	return completes(root)
}

// version is the module version the program was built from, or "devel".
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" || info.Main.Version == "(devel)" {
		return "devel"
	}
	return info.Main.Version
}
