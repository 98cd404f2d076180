package main

import (
	"bufio"
	"fmt"
	"os"
	"runtime/debug"
	"strconv"

	"lineworthy/testdata/bench/oracle"
)

// asRarely as in lineworthy batch the collector runs.
const asRarely = 400

// judge lets the oracle answer what lineworthy batch answers.
func judge(args []string) error {
	if len(args) != 2 {
		return fmt.Errorf("want WORKERS FILE")
	}
	workers, err := strconv.Atoi(args[0])
	if err != nil {
		return err
	}
	debug.SetGCPercent(asRarely)
	facts, err := os.ReadFile(args[1])
	if err != nil {
		return err
	}
	w := bufio.NewWriterSize(os.Stdout, 1<<20)
	if err := oracle.Run(args[1], facts, w, workers); err != nil {
		return err
	}
	return w.Flush()
}
