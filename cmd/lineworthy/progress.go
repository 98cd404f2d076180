package main

import (
	"io"
	"os"
	"time"

	"github.com/schollz/progressbar/v3"
	"golang.org/x/term"
)

// progress says on a terminal how far a batch has come, and nowhere else.
type progress struct{ bar *progressbar.ProgressBar }

func newProgress(w io.Writer) progress {
	f, ok := w.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) || os.Getenv("TERM") == "dumb" {
		return progress{}
	}
	return progress{progressbar.NewOptions64(-1,
		progressbar.OptionSetWriter(w), progressbar.OptionSetDescription("judging"), progressbar.OptionShowCount(),
		progressbar.OptionShowIts(), progressbar.OptionSetItsString("lines"), progressbar.OptionThrottle(200*time.Millisecond),
		progressbar.OptionClearOnFinish(), progressbar.OptionSpinnerType(14),
	)}
}

// lines shows how many lines are done. What cannot be shown is not worth an error.
func (p progress) lines(n int) {
	if p.bar != nil {
		_ = p.bar.Set(n)
	}
}

// clear leaves the line to other messages.
func (p progress) clear() {
	if p.bar != nil {
		_ = p.bar.Clear()
	}
}
