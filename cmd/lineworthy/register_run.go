package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"runtime/debug"

	"lineworthy/catalog"
	"lineworthy/check"
	"lineworthy/check/register"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

func runRegister(ctx context.Context, s streams, f registerFlags, dir string) (err error) {
	if err := register.Check(f.format, f.table); err != nil {
		return usage(err)
	}
	if f.days > farDays {
		return usage(fmt.Errorf("--due %d: want at most %d days, a hundred years", f.days, farDays))
	}
	if f.days < 0 {
		return usage(fmt.Errorf("--due %d: want 0 or more days; what is overdue is always listed", f.days))
	}
	if f.table == "impact" && f.against == "" {
		return usage(errors.New("--table impact: give the earlier state file with --against"))
	}
	if f.out != "" && (sameName(f.out, f.state) || sameName(f.out, f.against)) {
		return usage(fmt.Errorf("--out %s: the register would replace the state file: give another name", f.out))
	}
	if err := watchable(f); err != nil {
		return usage(err)
	}
	o, err := registerOptions(ctx, f)
	if err != nil {
		return err
	}
	debug.SetGCPercent(registerGrowth)
	o.Found = func(sheets int) { debug.SetMemoryLimit(registerMemory + int64(sheets)*registerEach) }
	o.Dir = dir
	var done func()
	o.Progress, done = registerBar(s.err)
	r, err := register.Run(ctx, o)
	done()
	if err != nil {
		return usage(registerFault(ctx, f, err))
	}
	defer func() { err = errors.Join(err, r.Close()) }()
	if f.state != "" {
		told(s.err, r)
	}
	if err := writeRegister(s, f, r); err != nil {
		return err
	}
	if f.watch {
		if err := watchRegister(ctx, s, f, r); err != nil {
			return usage(err)
		}
	}
	return registerEnded(r)
}

// farDays is how far the due list looks; a date past all calendars would overflow.
const farDays = 36500

// Memory of a register: the collector runs rarely, but well before memory that nobody needs piles up.
const (
	registerGrowth = 400      // percent
	registerMemory = 48 << 20 // bytes, a soft limit
	registerEach   = 48       // bytes that the limit grows with each sheet, so that a huge folder is not collected without end
)

func sameName(a, b string) bool {
	x, errX := filepath.Abs(a)
	y, errY := filepath.Abs(b)
	return b != "" && errX == nil && errY == nil && x == y
}

func registerFault(ctx context.Context, f registerFlags, err error) error {
	switch {
	case ctx.Err() == nil:
		return err
	case f.state == "":
		return errors.New("ended before the register was complete; with --state a run can go on where it was")
	}
	return errors.New("ended before the register was complete; give the same command to go on")
}

func registerOptions(ctx context.Context, f registerFlags) (o register.Options, err error) {
	if o.AsOf, err = day(f.asOf); err != nil {
		return o, usage(err)
	}
	o.Catalog = catalog.Open()
	if f.site != "" {
		if o.Catalog, err = o.Catalog.Overlay(f.site); err != nil {
			return o, usage(err)
		}
	}
	set, err := rulesWith(f.rules)
	if err != nil {
		return o, err
	}
	engine, err := check.New(ctx, check.Options{Catalog: o.Catalog, AsOf: o.AsOf, Version: version(), Rules: &set, Many: true})
	if err != nil {
		return o, err
	}
	o.Judge = func(ctx context.Context, s *sheet.Line) (*report.Verdict, error) {
		return engine.Summary(ctx, s, register.DueRules...)
	}
	o.DueDays, o.State, o.Against = f.days, f.state, f.against
	o.Basis = register.Basis{Tool: version(), Rules: set.Digest(), Rows: map[string]string{}}
	for _, kind := range catalog.Kinds {
		for _, id := range o.Catalog.IDs(kind) {
			o.Basis.Rows[kind+"/"+id] = o.Catalog.Digest(kind, id)
		}
	}
	return o, nil
}

// told says what the state file spared. It is not part of the register, which is the same however it came about.
func told(w io.Writer, r *register.Register) {
	fmt.Fprintf(w, "%d judged, %d taken over from the state file\n", r.Judged(), r.Sheets()-r.Judged())
	if n := r.Damaged(); n > 0 {
		fmt.Fprintf(w, "%d damaged lines of the state file were not relied on\n", n)
	}
}

func writeRegister(s streams, f registerFlags, r *register.Register) error {
	write := func(w io.Writer) error { return r.Write(w, f.format, f.table) }
	if f.out != "" {
		return toFile(f.out, write)
	}
	return write(s.out)
}

// registerEnded is the exit code of the worst sheet.
func registerEnded(r *register.Register) error {
	switch bad, tool := r.Bad(); {
	case bad > tool:
		return outcome(exitBadInput)
	case tool > 0:
		return outcome(exitFault)
	case r.Count(report.Unfit) > 0:
		return outcome(exitUnfit)
	case r.Count(report.Unproven) > 0:
		return outcome(exitUnproven)
	}
	return nil
}
