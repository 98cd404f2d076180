package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"

	"github.com/spf13/cobra"

	"lineworthy/rules"
)

// bundleFlags are the choices of the bundle command.
type bundleFlags struct{ out, key, keyID, site string }

func newBundle(s streams) *cobra.Command {
	var f bundleFlags
	cmd := &cobra.Command{
		Use:   "bundle --out FILE",
		Short: "Write the rules as a bundle that a stock Open Policy Agent loads",
		Long: `Write the rules as a bundle for a stock Open Policy Agent of the same version. On the facts that
lineworthy facts prints, it finds under data.verdict.findings what this program finds. It says nothing of
what could not be judged: that, and the verdict, come from this program alone.

Equal rules give the same file to the byte, and its revision is the digest of the rules. With --key the
bundle is signed (ES256); the signature, and only that, differs each time.`,
		Example: "  lineworthy bundle --out rules.tar.gz\n  lineworthy bundle --out rules.tar.gz --key ec.pem --key-id plant",
		Args:    cobra.NoArgs,
		RunE:    func(*cobra.Command, []string) error { return runBundle(s, f) },
	}
	cmd.Flags().StringVar(&f.out, "out", "", "the file to write")
	cmd.Flags().StringVar(&f.key, "key", "", "file with a private EC key on P-256 in PEM, to sign with")
	cmd.Flags().StringVar(&f.keyID, "key-id", "", "the name under which whoever loads the bundle knows the key")
	cmd.Flags().StringVar(&f.site, "rules", "", "folder with rules and limits of the site, which come along under data.site")
	return cmd
}

func runBundle(s streams, f bundleFlags) error {
	if f.out == "" {
		return usage(errors.New("--out FILE is missing: name the file to write"))
	}
	key, err := bundleKey(f)
	if err != nil {
		return usage(err)
	}
	set, err := rulesWith(f.site)
	if err != nil {
		return err
	}
	var text bytes.Buffer
	if err := set.Bundle(&text, key); err != nil {
		if key != nil {
			err = usage(fmt.Errorf("%s: %w", f.key, err))
		}
		return err
	}
	if err := os.WriteFile(f.out, text.Bytes(), 0o644); err != nil {
		return usage(err)
	}
	fmt.Fprintf(s.err, "wrote %s, revision %s\n", f.out, set.Digest())
	return nil
}

// bundleKey is nil when nothing is to be signed.
func bundleKey(f bundleFlags) (*rules.BundleKey, error) {
	switch {
	case f.key == "" && f.keyID == "":
		return nil, nil
	case f.key == "" || f.keyID == "":
		return nil, errors.New("--key and --key-id go together: a signature whose key has no name protects nobody")
	}
	text, err := os.ReadFile(f.key)
	if err != nil {
		return nil, err
	}
	return &rules.BundleKey{PEM: text, ID: f.keyID}, nil
}
