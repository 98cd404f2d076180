package main

import (
	"fmt"
	"io"
	"regexp"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/check/record"
)

func newRegisterVerify(s streams) *cobra.Command {
	var format string
	var heads []string
	cmd := &cobra.Command{
		Use:   "verify FILE",
		Short: "Prove that no line of a record was changed, taken out, put in or moved",
		Long: `Prove the chain of a record: each line bears its own sum and that of the line before it. The head printed is the
sum of the last line; inspect --store and sign --append-to print it too. Note it elsewhere: with --head it shows later that
no lines were cut off the end since. Without --head that does not show, for the lines left are a sound chain.

Exit codes: 0 proven; 3 broken, or a head given is not in it; 4 the last line is not complete; 2 bad input.`,
		Example: "  lineworthy register verify approvals.jsonl\n  lineworthy register verify approvals.jsonl --head 3f0c...91ab   # all 64 digits of a sum noted earlier",
		Args:    cobra.ExactArgs(1),
		RunE:    func(_ *cobra.Command, args []string) error { return runRegisterVerify(s, args[0], format, heads) },
	}
	cmd.Flags().StringVar(&format, "format", "text", "text for people or json for machines")
	cmd.Flags().StringArrayVar(&heads, "head", nil, "sum noted earlier that must still be in the record (may be repeated)")
	return cmd
}

var headForm = regexp.MustCompile(`^[0-9a-f]{64}$`)

func runRegisterVerify(s streams, path, format string, heads []string) error {
	if format != "text" && format != "json" {
		return usage(fmt.Errorf("--format %s: want text or json", format))
	}
	for _, h := range heads {
		if !headForm.MatchString(h) {
			return usage(fmt.Errorf("--head %s: want the 64 digits and letters that this command printed", h))
		}
	}
	p, err := record.Verify(path, heads...)
	if err != nil {
		return usage(err)
	}
	if format == "json" {
		if err := writeJSON(s.out, p); err != nil {
			return err
		}
	} else {
		writeProof(s.out, path, p)
	}
	switch {
	case p.Broken != nil || len(p.Missing) > 0:
		return outcome(exitUnfit)
	case p.Torn != nil:
		return outcome(exitUnproven)
	}
	return nil
}

func writeProof(w io.Writer, path string, p record.Proof) {
	word := "PROVEN"
	switch {
	case p.Broken != nil:
		word = "BROKEN"
	case len(p.Missing) > 0:
		word = "CUT OFF OR EXCHANGED"
	case p.Torn != nil:
		word = "NOT COMPLETE"
	}
	fmt.Fprintf(w, "%s  %s\nProven lines: %d. Head: %s\n", word, path, p.Lines, p.Head)
	if p.Broken != nil {
		fmt.Fprintf(w, "%s.\nNothing from there on is proven. Keep a copy, and compare it with a backup.\n", capital(p.Broken.Error()))
	}
	if p.Torn != nil {
		fmt.Fprintf(w, "%s.\nThe next line recorded moves these bytes to a file of their own and names it.\n", capital(p.Torn.Error()))
	}
	for _, h := range p.Missing {
		fmt.Fprintf(w, "Not in the record: %s. Lines were cut off its end, or it is another record.\n", h)
	}
	for _, n := range p.Backward {
		fmt.Fprintf(w, "Line %d: its time is before that of the line above: a clock went back.\n", n)
	}
	for _, n := range p.SetAside {
		fmt.Fprintf(w, "Line %d: names the file with a write that was cut short.\n", n)
	}
}

func capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
