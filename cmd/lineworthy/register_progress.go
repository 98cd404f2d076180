package main

import (
	"io"
	"os"
	"time"

	"github.com/schollz/progressbar/v3"
	"golang.org/x/term"
)

// registerBar draws a bar on a terminal and nothing elsewhere. done takes it away.
func registerBar(w io.Writer) (step func(done, total int), done func()) {
	f, ok := w.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return nil, func() {}
	}
	var bar *progressbar.ProgressBar
	step = func(n, total int) {
		if bar == nil {
			bar = progressbar.NewOptions(total, progressbar.OptionSetWriter(f), progressbar.OptionSetDescription("judging"),
				progressbar.OptionShowCount(), progressbar.OptionSetPredictTime(true), progressbar.OptionThrottle(200*time.Millisecond),
				progressbar.OptionClearOnFinish())
		}
		_ = bar.Set(n)
	}
	return step, func() {
		if bar != nil {
			_ = bar.Clear()
		}
	}
}
