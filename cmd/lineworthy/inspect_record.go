package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"time"

	"lineworthy/check"
	"lineworthy/check/inspect"
	"lineworthy/check/record"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// runInspected judges a filled-in record. The readings are written into the line, which was read anew for it.
func runInspected(ctx context.Context, s streams, f inspectFlags, path string, e *check.Engine, l *inspect.List, line *sheet.Line) error {
	when, err := moment(f.time)
	if err != nil {
		return err
	}
	text, err := os.ReadFile(f.record)
	if err != nil {
		return usage(err)
	}
	filled, err := l.Merge(text)
	if err != nil {
		return usage(fmt.Errorf("%s: %w", f.record, err))
	}
	if err := past(filled.Day, when); err != nil {
		return usage(fmt.Errorf("%s: %w", f.record, err))
	}
	result, err := inspected(ctx, f, path, e, filled, line)
	if err != nil {
		return err
	}
	if f.store != "" { // first, for what is printed may be acted on
		if err := keep(s, f, record.Item{Time: when, Kind: "inspection", Payload: result}); err != nil {
			return err
		}
	}
	if err := writeResult(s, f, result); err != nil {
		return err
	}
	if code := worst([]*report.Verdict{{Word: result.Word}}, false); code != exitFit {
		return outcome(code)
	}
	return nil
}

// ahead is how far the calendar of the easternmost place is before that of UTC.
const ahead = 14 * time.Hour

// past refuses a record of a day that is still to come: nobody has looked at anything on it.
func past(on units.Date, when time.Time) error {
	if last := when.UTC().Add(ahead); on.String() > last.Format(time.DateOnly) {
		return fmt.Errorf("day: %s is still to come, for it is %s: write the day of the inspection, and see that the clock is right", on, when.UTC().Format(time.DateOnly))
	}
	return nil
}

func inspected(ctx context.Context, f inspectFlags, path string, e *check.Engine, filled *inspect.Filled, line *sheet.Line) (*inspect.Result, error) {
	plain, err := sheet.Read(path)
	if err != nil {
		return nil, err
	}
	if plain.Sum != line.Sum {
		return nil, usage(fmt.Errorf("%s was changed just now: give the command again", path))
	}
	base, err := judgeOn(ctx, e, plain, filled.Day)
	if err != nil {
		return nil, err
	}
	onDay(line, filled.Day)
	now, err := e.Check(ctx, line)
	if err != nil {
		return nil, err
	}
	return filled.Judge(f.who, base, now), nil
}

func keep(s streams, f inspectFlags, item record.Item) error {
	r, err := record.At(f.store).Append(item)
	if r.SetAside != "" {
		fmt.Fprintf(s.err, "%s: the end of an earlier write that was cut short is now in %s\n", f.store, r.SetAside)
	}
	if err != nil {
		return usage(fmt.Errorf("not recorded; give the same command again once this is mended: %w", err))
	}
	if len(r.Backward) > 0 {
		fmt.Fprintf(s.err, "%s: the time is before that of the line above: a clock went back\n", f.store)
	}
	fmt.Fprintf(s.err, "recorded: %s line %d, sum %s\n", f.store, r.Last, r.Head)
	return nil
}

func writeResult(s streams, f inspectFlags, r *inspect.Result) error {
	write := func(w io.Writer) error {
		if f.format == "json" {
			return writeJSON(w, r)
		}
		o := report.Options{Width: f.width, Colour: f.out == "" && colour(w)}
		if o.Width == 0 && f.out == "" {
			o.Width = width(w)
		}
		_, err := io.WriteString(w, r.Text(o))
		return err
	}
	if f.out != "" {
		return toFile(f.out, write)
	}
	return write(s.out)
}
