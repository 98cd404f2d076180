// Command lineworthy judges pressurised transfer lines before the first valve opens.
package main

import (
	"context"
	"os"
	"os/signal"
	"runtime/debug"
)

func main() {
	os.Exit(start())
}

func start() int {
	debug.SetGCPercent(400) // one line is judged in a few megabytes; collecting them takes longer than judging
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	return run(ctx, os.Args[1:], streams{os.Stdin, os.Stdout, os.Stderr})
}
