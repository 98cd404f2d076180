package main

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
)

// sheets writes N sheets: the shipped lines, each with numbers and tags of its own, and other lengths and test dates.
func sheets(args []string) error {
	if len(args) != 2 {
		return fmt.Errorf("want N DIR")
	}
	n, err := strconv.Atoi(args[0])
	if err != nil {
		return err
	}
	paths, err := filepath.Glob(filepath.Join(lines, "*", "line.yaml"))
	if err != nil || len(paths) == 0 {
		return fmt.Errorf("no sheets in %s (%v)", lines, err)
	}
	texts := make([][]byte, len(paths))
	for i, p := range paths {
		if texts[i], err = os.ReadFile(p); err != nil {
			return err
		}
	}
	for i := range n {
		dir := filepath.Join(args[1], fmt.Sprintf("%04d", i/500))
		if err := os.MkdirAll(dir, 0o755); err != nil {
			return err
		}
		text := another(texts[i%len(texts)], i/len(texts))
		if err := os.WriteFile(filepath.Join(dir, fmt.Sprintf("%07d.yaml", i)), text, 0o644); err != nil {
			return err
		}
	}
	return nil
}

var (
	named  = regexp.MustCompile(`((?m:^line)|\btag|\bassigned): ([\w-]+)`)
	tested = regexp.MustCompile(`(\btested): 2026-(\d\d)`)
	length = regexp.MustCompile(`\blength: (\d+) m\b`)
)

// another is the k-th sheet that is made of one.
func another(text []byte, k int) []byte {
	text = named.ReplaceAll(text, fmt.Appendf(nil, "$1: $2-%05d", k))
	text = tested.ReplaceAllFunc(text, func(m []byte) []byte {
		month, _ := strconv.Atoi(string(m[len(m)-2:]))
		return fmt.Appendf(m[:len(m)-2:len(m)-2], "%02d", 1+(month+k)%11)
	})
	return length.ReplaceAllFunc(text, func(m []byte) []byte {
		metres, _ := strconv.Atoi(string(length.FindSubmatch(m)[1]))
		return fmt.Appendf(nil, "length: %d m", metres+k%3)
	})
}
