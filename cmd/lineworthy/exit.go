package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"lineworthy/catalog"
	"lineworthy/check/report"
	"lineworthy/check/sheet"
)

// The exit codes are part of the program's contract.
const (
	exitFit      = 0 // fit or conditional
	exitFault    = 1 // fault in the tool: no verdict
	exitBadInput = 2 // bad input or usage
	exitUnfit    = 3
	exitUnproven = 4 // also conditional under --strict
)

// usageError is a fault in the command line.
type usageError struct{ error }

func usage(err error) error { return usageError{err} }

// outcome carries a verdict's exit code out of a command. It is not a fault and prints nothing.
type outcome int

func (o outcome) Error() string { return fmt.Sprintf("exit %d", int(o)) }

// exitCode prints what went wrong and says with which code to end. It is the only place that knows both.
func exitCode(err error, w io.Writer) int {
	var o outcome
	switch {
	case err == nil:
		return exitFit
	case errors.As(err, &o):
		return int(o)
	case badInput(err):
		fmt.Fprintln(w, err)
		return exitBadInput
	}
	fmt.Fprintf(w, "lineworthy: fault in the tool, no verdict: %v\n", err)
	return exitFault
}

func badInput(err error) bool {
	var u usageError
	var p sheet.Problems
	var missing *catalog.NotFound
	var several *catalog.Ambiguous
	return errors.As(err, &u) || errors.As(err, &p) || errors.As(err, &missing) || errors.As(err, &several) ||
		strings.HasPrefix(err.Error(), "unknown command") || strings.Contains(err.Error(), "arg(s)")
}

// worst is the exit code of several verdicts: unfit over unproven over the rest.
func worst(vs []*report.Verdict, strict bool) int {
	code := exitFit
	for _, v := range vs {
		switch {
		case v.Word == report.Unfit:
			return exitUnfit
		case v.Word == report.Unproven || strict && v.Word == report.Conditional:
			code = exitUnproven
		case v.Word != report.Fit && v.Word != report.Conditional:
			return exitFault
		}
	}
	return code
}
