package main

import (
	"context"
	"errors"
	"fmt"
	"iter"
	"os"
	"runtime/debug"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lineworthy/check/batch"
	"lineworthy/check/decide"
	"lineworthy/check/report"
)

// batchFlags are the choices of the batch command.
type batchFlags struct {
	checkFlags
	facts    bool
	guards   bool
	recall   bool
	rules    string
	workers  int
	deadline time.Duration
}

func newBatch(s streams) *cobra.Command {
	var f batchFlags
	cmd := &cobra.Command{
		Use:   "batch [FILE|-|DIR]...",
		Short: "Judge many lines, one answer of JSON for each",
		Long: `Judge any number of lines on all cores and write one line of JSON for each, in the order they came: the
verdict, what was found, and which facts are missing. Only the lines under way are held in memory.

FILE and the standard input (-, also if nothing is named) hold one line of JSON for each: the text of a
sheet as a JSON string, or the name of its file; with --facts, the facts that lineworthy facts prints. A
FILE that ends in .yaml is one sheet. DIR is searched for sheets (.yaml), or with --facts for facts (.json).

A line that cannot be judged is answered with an error, and the others go on. The exit code is that of
check for the worst line: 2 if any could not be judged, else 3 for unfit, 4 for unproven.`,
		Example: "  lineworthy batch sheets/ > answers.jsonl\n  lineworthy batch --facts facts.jsonl",
		RunE:    func(c *cobra.Command, args []string) error { return runBatch(c.Context(), s, f, args) },
	}
	cmd.Flags().BoolVar(&f.facts, "facts", false, "the lines come as facts, not as sheets")
	cmd.Flags().BoolVar(&f.guards, "guards", true, "leave out rules that cannot find anything on a line; false is slower and finds the same")
	cmd.Flags().StringVar(&f.rules, "rules", "", "folder with rules and limits of the site, which can only find more")
	cmd.Flags().BoolVar(&f.recall, "recall", true, "reuse what was found on equal parts of earlier lines; false is slower and finds the same")
	cmd.Flags().IntVar(&f.workers, "workers", 0, "how many lines to judge at once (default: one for each core)")
	cmd.Flags().DurationVar(&f.deadline, "deadline", time.Minute, "the longest that one line may take; 0 for no end")
	cmd.Flags().BoolVar(&f.strict, "strict", false, "end with exit code 4 for a conditional line too")
	common(cmd, &f.checkFlags)
	return cmd
}

// Memory of a batch: the collector runs rarely, but well before memory that nobody needs piles up.
const (
	batchGrowth = 400      // percent
	factsMemory = 32 << 20 // bytes, a soft limit
	sheetMemory = 96 << 20 // sheets bring the catalog along
)

func runBatch(ctx context.Context, s streams, f batchFlags, args []string) error {
	debug.SetGCPercent(batchGrowth)
	debug.SetMemoryLimit(map[bool]int64{true: factsMemory, false: sheetMemory}[f.facts])
	judge, err := newJudge(ctx, f)
	if err != nil {
		return err
	}
	if len(args) == 0 {
		args = []string{"-"}
	}
	source, err := sources(s, f, args)
	if err != nil {
		return usage(err)
	}
	show := newProgress(s.err)
	sum, err := batch.Run(ctx, source, judge, s.out, batch.Options{
		Workers: f.workers, Deadline: f.deadline, Progress: show.lines,
		Broken: func(name string, err error) { show.clear(); fmt.Fprintf(s.err, "%s: %v\n", name, err) },
	})
	show.clear()
	if err != nil {
		return err
	}
	fmt.Fprintln(s.err, summed(sum))
	return ended(sum, f.strict)
}

// newJudge makes judges of facts, or of sheets.
func newJudge(ctx context.Context, f batchFlags) (func() batch.Judge, error) {
	set, err := rulesWith(f.rules)
	if err != nil {
		return nil, err
	}
	e, err := decide.New(ctx, set)
	if err != nil {
		return nil, err
	}
	switch {
	case !f.guards:
		e = e.Unguarded()
	case f.recall:
		e = e.Remembering()
	}
	if f.facts {
		return batch.Facts(e, set.Index()), nil
	}
	c, err := newEngine(ctx, f.checkFlags)
	if err != nil {
		return nil, err
	}
	return batch.Sheets(c, e, set.Index()), nil
}

// sources are the lines of all that is named. A name that is not there is an error before anything is judged.
func sources(s streams, f batchFlags, args []string) (iter.Seq[batch.Item], error) {
	var faults []error
	for _, name := range args {
		if _, err := os.Stat(name); name != "-" && err != nil {
			faults = append(faults, err)
		}
	}
	if len(faults) > 0 {
		return nil, errors.Join(faults...)
	}
	return func(yield func(batch.Item) bool) {
		for _, name := range args {
			for i := range sourceOf(s, f, name) {
				if !yield(i) {
					return
				}
			}
		}
	}, nil
}

func sourceOf(s streams, f batchFlags, name string) iter.Seq[batch.Item] {
	if name == "-" {
		return batch.Stream("stdin", s.in)
	}
	info, err := os.Stat(name)
	switch {
	case err != nil:
		return single(batch.Item{Name: name, Err: err})
	case info.IsDir() && f.facts:
		return batch.Files(name, ".json")
	case info.IsDir():
		return batch.Files(name, ".yaml", ".yml")
	case !f.facts && (strings.HasSuffix(name, ".yaml") || strings.HasSuffix(name, ".yml")):
		return single(batch.File(name))
	}
	return opened(name)
}

func single(i batch.Item) iter.Seq[batch.Item] {
	return func(yield func(batch.Item) bool) { yield(i) }
}

// opened is the lines of a file, which is open no longer than they are read.
func opened(name string) iter.Seq[batch.Item] {
	return func(yield func(batch.Item) bool) {
		file, err := os.Open(name)
		if err != nil {
			yield(batch.Item{Name: name, Err: err})
			return
		}
		defer file.Close()
		batch.Stream(name, file)(yield)
	}
}

// summed says what a batch came to.
func summed(sum batch.Summary) string {
	text := fmt.Sprintf("%d lines:", sum.Lines)
	for _, w := range []report.Word{report.Unfit, report.Unproven, report.Conditional, report.Fit} {
		text += fmt.Sprintf(" %d %s,", sum.Words[string(w)], w)
	}
	return text + fmt.Sprintf(" %d not judged", sum.Broken)
}

// ended is the exit code of the worst line.
func ended(sum batch.Summary, strict bool) error {
	switch {
	case sum.Broken > 0:
		return outcome(exitBadInput)
	case sum.Words[string(report.Unfit)] > 0:
		return outcome(exitUnfit)
	case sum.Words[string(report.Unproven)] > 0 || strict && sum.Words[string(report.Conditional)] > 0:
		return outcome(exitUnproven)
	}
	return nil
}
