package main

import (
	"bufio"
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"
)

// row is one measurement: microseconds for each line, by the clock and of all processors together.
type row struct{ wall, cpu int }

// table reads lines of plant, way, wall and processor time, and writes for every plant a table of medians, with how many
// times the first way takes what each other one does.
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
	ways, rows := map[string][]string{}, map[[2]string][]row{}
	for s := bufio.NewScanner(file); s.Scan(); {
		f := strings.Split(s.Text(), "\t")
		if len(f) != 4 {
			return fmt.Errorf("want plant, way and two times: %q", s.Text())
		}
		wall, err := strconv.Atoi(f[2])
		if err != nil {
			return err
		}
		cpu, err := strconv.Atoi(f[3])
		if err != nil {
			return err
		}
		if !slices.Contains(plants, f[0]) {
			plants = append(plants, f[0])
		}
		if !slices.Contains(ways[f[0]], f[1]) {
			ways[f[0]] = append(ways[f[0]], f[1])
		}
		key := [2]string{f[0], f[1]}
		rows[key] = append(rows[key], row{wall, cpu})
	}
	for _, p := range plants {
		fmt.Printf("\n### %s\n\n| way | µs a line | least to most | processor µs | stock exec takes, by the clock | of the processor |\n|---|---:|---:|---:|---:|---:|\n", p)
		first := rows[[2]string{p, ways[p][0]}]
		for _, w := range ways[p] {
			show(w, rows[[2]string{p, w}], first)
		}
	}
	return nil
}

// show writes one way. The ratios are medians of the rounds: in each of them both ways met the same machine.
func show(way string, own, first []row) {
	var walls, cpus, wallRatios, cpuRatios []float64
	for i := range min(len(own), len(first)) {
		walls, cpus = append(walls, float64(own[i].wall)), append(cpus, float64(own[i].cpu))
		wallRatios = append(wallRatios, float64(first[i].wall)/float64(max(own[i].wall, 1)))
		cpuRatios = append(cpuRatios, float64(first[i].cpu)/float64(max(own[i].cpu, 1)))
	}
	fmt.Printf("| %s | %.0f | %.0f to %.0f | %.0f | %.1f times | %.1f times |\n",
		way, median(walls), slices.Min(walls), slices.Max(walls), median(cpus), median(wallRatios), median(cpuRatios))
}

func median(t []float64) float64 {
	s := slices.Sorted(slices.Values(t))
	return s[len(s)/2]
}
