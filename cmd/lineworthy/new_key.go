package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"

	"github.com/spf13/cobra"

	"lineworthy/check/approval"
)

func newKey(s streams) *cobra.Command {
	return &cobra.Command{
		Use:   "key FILE",
		Short: "Make a key to sign with: FILE is yours alone, FILE.pub is for everybody who verifies",
		Long: `Make an Ed25519 key pair in PEM. FILE holds the private key without a password and may be read by you
alone: whoever has it can sign in your name. FILE.pub holds the public key; hand it over in a way that cannot be
tampered with, for verify believes the keys it is given. Neither file is ever overwritten.`,
		Args: cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error { return makeKey(s, args[0]) },
	}
}

func makeKey(s streams, path string) error {
	open := path + ".pub"
	for _, p := range []string{path, open} {
		if _, err := os.Lstat(p); !errors.Is(err, fs.ErrNotExist) {
			return usage(fmt.Errorf("%s is there already, and keys are never overwritten: name another file", p))
		}
	}
	private, public, err := approval.NewKey()
	if err != nil {
		return err
	}
	if err := create(path, private, 0o600); err != nil {
		return usage(err)
	}
	if err := create(open, public, 0o644); err != nil {
		return usage(errors.Join(err, os.Remove(path))) // half a pair would bar the next try
	}
	fmt.Fprintf(s.err, "wrote %s, to be kept secret, and %s\n", path, open)
	return nil
}

// create makes a file that is not there yet and waits until it is on the disk. With an error there is none, or the one
// that was there before.
func create(path string, text []byte, mode fs.FileMode) error {
	file, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return err
	}
	if _, err = file.Write(text); err == nil {
		err = file.Sync()
	}
	if err = errors.Join(err, file.Close()); err != nil {
		return errors.Join(fmt.Errorf("%s was not written: %w", path, err), os.Remove(path))
	}
	return nil
}
