package main

import (
	"context"
	"errors"
	"fmt"
	"time"

	"lineworthy/check/register"
)

const (
	soonest = time.Second // a folder of many sheets takes about that long to look through
	latest  = time.Hour
)

// watchable says why a watch with these choices would mislead.
func watchable(f registerFlags) error {
	switch {
	case f.every < soonest || f.every > latest:
		return fmt.Errorf("--every %s: want 1s to 1h", f.every)
	case !f.watch:
		return nil
	case f.format == "csv":
		return errors.New("--watch: a csv table cannot be added to; use --format text or jsonl")
	case f.out != "":
		return errors.New("--watch: a file of --out is written whole, once; leave --out away and redirect the output")
	case f.table != "" && f.table != "verdicts":
		return fmt.Errorf("--watch writes verdicts, and --table %s has none; leave --table away", f.table)
	}
	return nil
}

func watchRegister(ctx context.Context, s streams, f registerFlags, r *register.Register) error {
	ticker := time.NewTicker(f.every)
	defer ticker.Stop()
	return r.Watch(ctx, ticker.C, s.out, f.format)
}
