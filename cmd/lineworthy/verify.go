package main

import (
	"context"
	"errors"
	"fmt"
	"os"

	"github.com/spf13/cobra"

	"lineworthy/check/approval"
)

// verifyFlags are the choices of the verify command.
type verifyFlags struct {
	keys                      []string
	need                      int
	format, asOf, site, rules string
}

func newVerify(s streams) *cobra.Command {
	var f verifyFlags
	cmd := &cobra.Command{
		Use:   "verify FILE.json [SHEET] --key PUBLIC.pem...",
		Short: "Say whether a signed approval still holds",
		Long: `Prove the signatures of an approval with the public keys that you trust, and say whether it still holds on a
day. With the sheet, everything it rests on is compared (sheet, facts, rules, catalog rows), and the line is judged again
for that day. Without the sheet only signatures and dates are proven.

Answers and exit codes: valid 0; tampered, or signed by none of the keys, 3; stale, expired, not signed by enough keys, or
a refusal, 4; bad input 2.`,
		Example: "  lineworthy verify a.json line.yaml --key me.pem.pub --key second.pem.pub",
		Args:    cobra.RangeArgs(1, 2),
		RunE:    func(c *cobra.Command, args []string) error { return runVerify(c.Context(), s, f, args) },
	}
	cmd.Flags().StringArrayVar(&f.keys, "key", nil, "public key in PEM that you trust (may be repeated)")
	cmd.Flags().IntVar(&f.need, "need", 0, "how many of the keys must have signed (default all)")
	cmd.Flags().StringVar(&f.format, "format", "text", "text for people or json for machines")
	cmd.Flags().StringVar(&f.asOf, "as-of", "", "day the approval has to hold on, e.g. 2026-11-25 (default today)")
	cmd.Flags().StringVar(&f.site, "catalog", "", "folder with the site's own catalog rows, laid over the built-in ones")
	siteRules(cmd, &f.rules)
	return cmd
}

func (f verifyFlags) check() error {
	if f.format != "text" && f.format != "json" {
		return usage(fmt.Errorf("--format %s: want text or json", f.format))
	}
	if len(f.keys) == 0 {
		return usage(errors.New("verify needs --key with a public key that you trust: anybody can sign with a key of their own"))
	}
	if f.need < 0 || f.need > len(f.keys) {
		return usage(fmt.Errorf("--need %d: with the keys given it can be 1 to %d", f.need, len(f.keys)))
	}
	return nil
}

func runVerify(ctx context.Context, s streams, f verifyFlags, args []string) error {
	if err := f.check(); err != nil {
		return err
	}
	on, err := day(f.asOf)
	if err != nil {
		return usage(err)
	}
	keys, err := publicKeys(f.keys)
	if err != nil {
		return err
	}
	a, err := proven(args[0], keys)
	if err != nil {
		return err
	}
	a.AsOf = on.String()
	if a.Approval != nil {
		a.dates(f.need)
		if len(args) == 2 {
			if err := a.compare(ctx, f, args[1], on); err != nil {
				return err
			}
		}
	}
	a.sum()
	return a.write(s, f.format)
}

// proven takes the envelope apart. Nothing of an envelope that does not hold is passed on.
func proven(path string, keys []approval.Key) (*answer, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, usage(err)
	}
	a := &answer{Schema: answerSchema, File: path, Reasons: []string{}, Signers: []approval.Signer{}, Differences: []approval.Difference{}}
	e, s, signers, err := approval.Verify(text, keys)
	var tampered *approval.Tampered
	switch {
	case errors.As(err, &tampered):
		a.say(statusTampered, "%s", tampered.Why)
		return a, nil
	case errors.Is(err, approval.ErrUnsigned):
		a.say(statusUnsigned, "%s", err)
		a.Signers = signers
		return a, nil
	case err != nil:
		return nil, usage(fmt.Errorf("%s: %w", path, err))
	}
	a.Signers, a.Signatures, a.Approval, a.Subject = signers, len(e.Signatures), &s.Predicate, &s.Subject[0]
	return a, nil
}
