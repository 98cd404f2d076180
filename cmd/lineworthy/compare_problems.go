package main

import (
	"errors"

	"lineworthy/check/sheet"
)

// asProblems gives the faults of a sheet, if that is what the error is.
func asProblems(err error) (sheet.Problems, bool) {
	var p sheet.Problems
	ok := errors.As(err, &p)
	return p, ok
}
