package main

import (
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lineworthy/check/register"
)

// registerFlags are the choices of the register command.
type registerFlags struct {
	format, table, out string
	state, against     string
	asOf, site, rules  string
	days               int
	watch              bool
	every              time.Duration
}

func newRegister(s streams) *cobra.Command {
	var f registerFlags
	cmd := &cobra.Command{
		Use:   "register DIR",
		Short: "Judge a whole folder of sheets, or prove a record",
		Long: `Judge every sheet (*.yaml, *.yml) in a folder and the folders in it, and show what the lines have in common:

verdicts  one row for each sheet
faults    sheets that could not be judged, and why; they never stop the rest
due       tests, resistance tests, inspections, service lives and temporary changes, by date
evidence  values to confirm, in the order in which they make most lines fit
hoses     one hose in two lines, and hoses that carried another product before
impact    with --against: which verdicts flipped, and what appeared, cleared or differs

With --state the summaries are kept in a file that is only added to. A run that was ended goes on where it was, and
a sheet is judged again only when it, the rules, the catalog, the program or the day of an undated sheet changed.
Hidden files and folders are left out, and links to folders are not followed. The lists are in text shortened;
csv and jsonl have all rows, csv those of one table.

With --watch the folder is looked at again and again after the first table, and only the verdict rows that are not what
they were are written, until it is interrupted; the exit code is then that of the last verdicts. Rules, catalog, the
day and the other lists stay those of the start, and the state file stays locked.

Exit codes: 0 all fit or conditional; 3 one is unfit; 4 one is unproven; 2 a sheet is bad; 1 fault in the tool.`,
		Example: "  lineworthy register lines --state register.jsonl\n  lineworthy register lines --format csv --table due --due 60 --out due.csv",
		Args:    cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			if len(args) == 0 {
				return c.Help()
			}
			return runRegister(c.Context(), s, f, args[0])
		},
	}
	cmd.Flags().StringVar(&f.format, "format", "text", strings.Join(register.Formats, ", "))
	cmd.Flags().StringVar(&f.table, "table", "", "only this table: "+strings.Join(register.Tables, ", ")+" (csv: verdicts)")
	cmd.Flags().StringVar(&f.out, "out", "", "write to this file; it is replaced only once it is whole")
	cmd.Flags().StringVar(&f.state, "state", "", "file that keeps the summaries, to go on from")
	cmd.Flags().StringVar(&f.against, "against", "", "state file of an earlier run to compare the verdicts with")
	cmd.Flags().IntVar(&f.days, "due", 90, "days that the due list looks ahead; what is overdue is always in it")
	cmd.Flags().StringVar(&f.asOf, "as-of", "", "day of the due list, and of sheets that state no date, e.g. 2026-11-25 (default today)")
	cmd.Flags().StringVar(&f.site, "catalog", "", "folder with the site's own catalog rows, laid over the built-in ones")
	cmd.Flags().BoolVar(&f.watch, "watch", false, "go on after the first table, and write the verdicts that change; not with csv or --out")
	cmd.Flags().DurationVar(&f.every, "every", 5*time.Second, "with --watch: how often to look, 1s to 1h")
	siteRules(cmd, &f.rules)
	_ = cmd.RegisterFlagCompletionFunc("format", cobra.FixedCompletions(register.Formats, cobra.ShellCompDirectiveNoFileComp))
	_ = cmd.RegisterFlagCompletionFunc("table", cobra.FixedCompletions(register.Tables, cobra.ShellCompDirectiveNoFileComp))
	cmd.AddCommand(newRegisterVerify(s))
	return cmd
}
