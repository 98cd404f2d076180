package main

import (
	"bufio"
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"
)

// table reads lines of plant, way and microseconds for each line, and writes for every plant a table of medians, with how
// many times the first way each other one takes.
func table(args []string) error {
	if len(args) != 1 {
		return fmt.Errorf("want FILE")
	}
	file, err := os.Open(args[0])
	if err != nil {
		return err
	}
	defer file.Close()
	var plants []string
	ways, times := map[string][]string{}, map[string][]int{}
	for s := bufio.NewScanner(file); s.Scan(); {
		f := strings.Split(s.Text(), "\t")
		if len(f) != 3 {
			return fmt.Errorf("want plant, way and microseconds: %q", s.Text())
		}
		us, err := strconv.Atoi(f[2])
		if err != nil {
			return err
		}
		if !slices.Contains(plants, f[0]) {
			plants = append(plants, f[0])
		}
		if !slices.Contains(ways[f[0]], f[1]) {
			ways[f[0]] = append(ways[f[0]], f[1])
		}
		times[f[0]+"\t"+f[1]] = append(times[f[0]+"\t"+f[1]], us)
	}
	for _, p := range plants {
		fmt.Printf("\n### %s\n\n| way | µs a line (median) | least to most | stock exec takes so many times that |\n|---|---:|---:|---:|\n", p)
		first := median(times[p+"\t"+ways[p][0]])
		for _, w := range ways[p] {
			t := times[p+"\t"+w]
			fmt.Printf("| %s | %d | %d to %d | %.1f |\n", w, median(t), slices.Min(t), slices.Max(t), float64(first)/float64(max(median(t), 1)))
		}
	}
	return nil
}

func median(t []int) int {
	s := slices.Sorted(slices.Values(t))
	return s[len(s)/2]
}
