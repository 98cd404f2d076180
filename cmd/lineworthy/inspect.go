package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"lineworthy/check"
	"lineworthy/check/inspect"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// inspectFlags are the choices of the inspect command.
type inspectFlags struct {
	checkFlags
	out, record, store, who, time string
}

func newInspect(s streams) *cobra.Command {
	var f inspectFlags
	cmd := &cobra.Command{
		Use:   "inspect SHEET",
		Short: "Print what to look at before the job, or judge the record of it",
		Long: `Without --record: the list for this line, in walking order from source to destination: each part, joint and seal
with what to look for, read off the plate and measure, when to reject it and who says so, the leak test, hold points and
protective equipment. --format yaml writes it as a record to fill in.

With --record: the readings go into a copy of the sheet, which is judged by the same rules for the day of the
inspection. What was not read is never taken as good. With --store the result is appended to a record that is never
overwritten; lineworthy register verify proves it.

Exit codes with --record: 0 cleared (perhaps with conditions), 2 bad input, 3 unfit, 4 unproven.`,
		Example: `  lineworthy inspect line.yaml --format yaml --out record.yaml
  lineworthy inspect line.yaml --record record.yaml --store records.jsonl --who "A. Example"`,
		Args: cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error { return runInspect(c.Context(), s, f, args[0]) },
	}
	fl := cmd.Flags()
	fl.StringVar(&f.format, "format", "text", "text, yaml (a record to fill in) or html (to print); with --record text or json")
	fl.StringVar(&f.out, "out", "", "write to this file; a record that is there already is left as it is")
	fl.StringVar(&f.record, "record", "", "filled-in record to judge")
	fl.StringVar(&f.store, "store", "", "append the result to this file, which only ever grows")
	fl.StringVar(&f.who, "who", "", "name of the one who inspected")
	fl.StringVar(&f.time, "time", "", "time to write into that record, e.g. 2026-11-25T14:30:00Z (default now)")
	fl.IntVar(&f.width, "width", 0, "width of the text in characters (default: the terminal, else 100)")
	common(cmd, &f.checkFlags)
	siteRules(cmd, &f.rules)
	return cmd
}

func (f inspectFlags) check() error {
	want := []string{"text", "yaml", "html"}
	switch {
	case f.record != "":
		if want = []string{"text", "json"}; strings.TrimSpace(f.who) == "" {
			return errors.New("--record needs --who, the name of the one who inspected")
		}
		if err := inspect.Printable(f.who); err != nil {
			return fmt.Errorf("--who: %w", err)
		}
	case f.store != "" || f.who != "" || f.time != "":
		return errors.New("--store, --who and --time go with --record, the filled-in record")
	}
	for _, w := range want {
		if w == f.format {
			return nil
		}
	}
	return fmt.Errorf("--format %s: want one of %v here", f.format, want)
}

// spared refuses to write over what cannot be had again: the sheet, a record that may be filled in, the store.
func (f inspectFlags) spared(path string) error {
	there, err := os.Stat(f.out)
	if err != nil {
		return nil // nothing is there, or the write says what is wrong
	}
	for _, keep := range []string{path, f.record, f.store} {
		if other, err := os.Stat(keep); err == nil && os.SameFile(there, other) {
			return fmt.Errorf("--out %s would be written over %s: name another file", f.out, keep)
		}
	}
	if !there.Mode().IsRegular() {
		return nil
	}
	if text, err := os.ReadFile(f.out); err == nil && bytes.Contains(text, []byte("\nsheet_sha256:")) {
		return fmt.Errorf("%s is an inspection record, and is left as it is: name another file", f.out)
	}
	return nil
}

func runInspect(ctx context.Context, s streams, f inspectFlags, path string) error {
	if err := f.check(); err != nil {
		return usage(err)
	}
	if err := f.spared(path); err != nil {
		return usage(err)
	}
	line, err := sheet.Read(path)
	if err != nil {
		return err
	}
	engine, err := newEngine(ctx, f.checkFlags)
	if err != nil {
		return err
	}
	list, err := inspectionList(engine, f.checkFlags, line)
	if err != nil {
		return err
	}
	if f.record != "" {
		return runInspected(ctx, s, f, path, engine, list, line)
	}
	v, err := engine.Check(ctx, line)
	if err != nil {
		return err
	}
	list.Judged(v)
	text, err := listText(s, f, list)
	if err != nil {
		return err
	}
	if f.out == "" {
		_, err = io.WriteString(s.out, text)
		return err
	}
	if f.format == "yaml" {
		return writeNew(s, f.out, []byte(text)) // a record somebody filled in is never overwritten
	}
	return toFile(f.out, func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	})
}

func inspectionList(e *check.Engine, f checkFlags, line *sheet.Line) (*inspect.List, error) {
	known, err := e.Facts(line)
	if err != nil {
		return nil, err
	}
	cat, on, err := siteCatalog(f)
	if err != nil {
		return nil, err
	}
	return inspect.New(line, cat, on, known, check.ShownAs(line))
}

func listText(s streams, f inspectFlags, l *inspect.List) (string, error) {
	switch f.format {
	case "yaml":
		return l.Form(), nil
	case "html":
		return l.HTML()
	}
	o := report.Options{Width: f.width, Colour: f.out == "" && colour(s.out)}
	if o.Width == 0 && f.out == "" {
		o.Width = width(s.out)
	}
	return l.Text(o), nil
}

// onDay is the sheet as it would be judged on the day of the inspection.
func onDay(line *sheet.Line, day units.Date) {
	line.AsOf = sheet.Of[units.Date]{V: day, Set: true, Pos: line.AsOf.Pos, Text: day.String()}
}
