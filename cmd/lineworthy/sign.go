package main

import (
	"context"
	"crypto/ed25519"
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"lineworthy/check"
	"lineworthy/check/approval"
	"lineworthy/check/record"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// signFlags are the choices of the sign command.
type signFlags struct {
	key, file, register, time string
	who, role, decision       string
	note, until, conditions   string
	accept                    []string
	asOf, site, rules         string
}

func newSign(s streams) *cobra.Command {
	var f signFlags
	cmd := &cobra.Command{
		Use:   "sign SHEET --key KEY.pem --who NAME --role ROLE --decision approved --out FILE.json",
		Short: "Judge a line and sign who approved or refused it",
		Long: `Judge the line for a day and sign the decision about it: an envelope (DSSE) with who decided what, the
conditions accepted, and the digests of all it rests on. The line is judged for --as-of, whatever day the sheet states.

An unfit or unproven line cannot be approved (exit codes 3 and 4). A conditional one can when each condition is
accepted with a reason and a last day; else the list to fill in is written to the output (exit code 4).

When FILE.json is there already, a further signature is added to it, provided that it states the same. Without
--who, --role and --decision it is taken as it stands, and judged for today as well.`,
		Example: `  lineworthy new key me.pem
  lineworthy sign line.yaml --key me.pem --who "A. Example" --role "process engineer" --decision approved --out a.json > list.yaml
  lineworthy sign line.yaml --key me.pem --who "A. Example" --role "process engineer" --decision approved --out a.json --conditions list.yaml
  lineworthy sign line.yaml --key second.pem --out a.json`,
		Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error { return runSign(c.Context(), s, f, args[0]) },
	}
	fl := cmd.Flags()
	fl.StringVar(&f.key, "key", "", "private key in PEM, made with: lineworthy new key")
	fl.StringVar(&f.file, "out", "", "file of the signed approval")
	fl.StringVar(&f.who, "who", "", "name of the one who decides")
	fl.StringVar(&f.role, "role", "", "in which role")
	fl.StringVar(&f.decision, "decision", "", "approved or refused")
	fl.StringVar(&f.note, "note", "", "a remark that is signed too")
	fl.StringVar(&f.until, "until", "", "last day the approval holds, e.g. 2027-05-25")
	fl.StringArrayVar(&f.accept, "accept", nil, `one condition: "RULE or value=reason until 2027-05-25" (may be repeated)`)
	fl.StringVar(&f.conditions, "conditions", "", "file with the filled-in list of conditions")
	fl.StringVar(&f.register, "append-to", "", "record the approval in this file too, which only ever grows")
	fl.StringVar(&f.time, "time", "", "time to write into that record, e.g. 2026-11-25T14:30:00Z (default now)")
	fl.StringVar(&f.asOf, "as-of", "", "day the line is judged for, e.g. 2026-11-25 (default today)")
	fl.StringVar(&f.site, "catalog", "", "folder with the site's own catalog rows, laid over the built-in ones")
	siteRules(cmd, &f.rules)
	return cmd
}

// signing is one run of the sign command.
type signing struct {
	signFlags
	streams
	engine *check.Engine
	line   *sheet.Line
	sum    string // SHA-256 of the sheet, byte for byte
	today  units.Date
}

func runSign(ctx context.Context, s streams, f signFlags, path string) error {
	if f.key == "" || f.file == "" {
		return usage(errors.New("sign needs --key, the private key to sign with, and --out, the file to write"))
	}
	key, err := privateKey(s, f.key)
	if err != nil {
		return err
	}
	when, err := moment(f.time)
	if err != nil {
		return err
	}
	n, err := newSigning(ctx, s, f, path)
	if err != nil {
		return err
	}
	unlock, err := record.Lock(f.file)
	if err != nil {
		return usage(err)
	}
	defer unlock()
	envelope, err := n.envelope(ctx)
	if err != nil {
		return err
	}
	if err := n.add(envelope, key); err != nil {
		return err
	}
	if f.register == "" {
		return nil
	}
	return n.record(envelope, when)
}

func newSigning(ctx context.Context, s streams, f signFlags, path string) (*signing, error) {
	n := &signing{signFlags: f, streams: s}
	var err error
	if n.today, err = day(f.asOf); err != nil {
		return nil, usage(err)
	}
	if n.line, n.sum, err = readSheet(path); err != nil {
		return nil, err
	}
	n.engine, err = newEngine(ctx, checkFlags{asOf: f.asOf, site: f.site, rules: f.rules})
	return n, err
}

func (n *signing) add(e *approval.Envelope, key ed25519.PrivateKey) error {
	added, err := e.Sign(key)
	if err != nil {
		return err
	}
	if !added {
		fmt.Fprintf(n.out, "%s bears the signature of this key already\n", n.file)
		return nil
	}
	text, err := e.Encode()
	if err != nil {
		return err
	}
	if err := record.Replace(n.file, text, 0o644); err != nil {
		return usage(fmt.Errorf("%s: not signed: %w", n.file, err))
	}
	fmt.Fprintf(n.out, "signed: %s, signature %d\n", n.file, len(e.Signatures))
	return nil
}
