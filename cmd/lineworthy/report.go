package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/check/report"
)

// reportFlags are the choices of the report command.
type reportFlags struct {
	format, out string
	full        bool
	width       int
}

func newReport(s streams) *cobra.Command {
	var f reportFlags
	cmd := &cobra.Command{
		Use:   "report VERDICT...",
		Short: "Write a stored verdict as a page, a text or a file for other tools",
		Long: `Write verdicts that "check --format json" made (- reads one from the input) in another format. Nothing is
judged anew: the date, the catalog and the rules are those of the stored verdict. The exit code is 0 whatever
the verdict says.

text      for a terminal or a printer
markdown  for a record or a review page
html      one page with the line drawn, to read on screen or to print on A4; it loads nothing and runs nothing
sarif     findings with their places in the sheet (SARIF 2.1.0)
junit     one test suite for each line, for build servers
json      the verdict document itself`,
		Example: "  lineworthy check --format json line.yaml > verdict.json\n  lineworthy report verdict.json --format html --out verdict.html",
		Args:    cobra.MinimumNArgs(1),
		RunE:    func(_ *cobra.Command, args []string) error { return runReport(s, f, args) },
	}
	cmd.Flags().StringVar(&f.format, "format", "text", "report format: "+strings.Join(report.Formats(), ", "))
	cmd.Flags().StringVar(&f.out, "out", "", "write to this file; it is replaced only once the report is whole")
	cmd.Flags().BoolVar(&f.full, "full", false, "list everything that was judged, and full digests")
	cmd.Flags().IntVar(&f.width, "width", 0, "width of the text report in characters (default: the terminal, else 100)")
	_ = cmd.RegisterFlagCompletionFunc("format", cobra.FixedCompletions(report.Formats(), cobra.ShellCompDirectiveNoFileComp))
	return cmd
}

func runReport(s streams, f reportFlags, paths []string) error {
	if _, err := report.For(f.format); err != nil {
		return usage(err)
	}
	if f.format == "html" && len(paths) > 1 {
		return usage(errors.New("an html page is about one line: give one verdict"))
	}
	verdicts, err := stored(s.in, paths)
	if err != nil {
		return usage(err)
	}
	o := report.Options{Width: f.width, Full: f.full}
	if f.out != "" {
		return toFile(f.out, func(w io.Writer) error { return report.All(w, f.format, verdicts, o) })
	}
	if o.Colour = colour(s.out); o.Width == 0 {
		o.Width = width(s.out)
	}
	return report.All(s.out, f.format, verdicts, o)
}

// stored reads every verdict and names all that cannot be read.
func stored(in io.Reader, paths []string) ([]*report.Verdict, error) {
	var verdicts []*report.Verdict
	var faults []error
	for _, path := range paths {
		data, err := contents(in, path)
		if err != nil {
			faults = append(faults, err)
			continue
		}
		v, err := report.Read(data)
		if err != nil {
			faults = append(faults, fmt.Errorf("%s: %w", path, err))
			continue
		}
		verdicts = append(verdicts, v)
	}
	return verdicts, errors.Join(faults...)
}

func contents(in io.Reader, path string) ([]byte, error) {
	if path == "-" {
		return io.ReadAll(in)
	}
	return os.ReadFile(path)
}

// toFile replaces a file in one step, so that a fault never leaves half a report behind.
func toFile(path string, write func(io.Writer) error) (err error) {
	f, err := os.CreateTemp(filepath.Dir(path), ".report-*")
	if err != nil {
		return usage(fmt.Errorf("%s cannot be written: %w", path, err))
	}
	err = errors.Join(write(f), f.Chmod(0o644), f.Close())
	if err == nil {
		err = os.Rename(f.Name(), path)
	}
	if err != nil {
		_ = os.Remove(f.Name())
	}
	return diskFault(path, err)
}

// diskFault tells a fault of the disk, which the user can mend, from one of the tool. Nothing was written then.
func diskFault(path string, err error) error {
	var disk *fs.PathError
	var link *os.LinkError
	if errors.As(err, &disk) || errors.As(err, &link) {
		return usage(fmt.Errorf("%s was not written: %w", path, err))
	}
	return err
}
