package main

import (
	"io"
	"os"
	"time"

	"golang.org/x/term"

	"lineworthy/check/units"
)

const widest = 120 // longer lines are hard to read

// width is that of the terminal, or 0 when there is none.
func width(w io.Writer) int {
	f, ok := w.(*os.File)
	if !ok {
		return 0
	}
	columns, _, err := term.GetSize(int(f.Fd()))
	if err != nil {
		return 0
	}
	return min(columns, widest)
}

// colour is used on a terminal only, and not when NO_COLOR is set or the terminal is dumb.
func colour(w io.Writer) bool {
	f, ok := w.(*os.File)
	return ok && term.IsTerminal(int(f.Fd())) && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
}

// today is the one place where the program looks at the clock.
func today() units.Date {
	return units.Date{Days: int(time.Now().Unix() / 86400)}
}
