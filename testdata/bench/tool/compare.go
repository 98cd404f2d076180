package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
)

// findings are the reports of each line, by the name of its file, in an order of their own.
type findings map[string][]string

func compare(args []string) error {
	if len(args) < 2 {
		return fmt.Errorf("want two files or more")
	}
	first, err := readFindings(args[0])
	if err != nil {
		return err
	}
	reports := 0
	for _, list := range first {
		reports += len(list)
	}
	for _, path := range args[1:] {
		other, err := readFindings(path)
		if err != nil {
			return err
		}
		if !slices.Equal(slices.Sorted(maps.Keys(first)), slices.Sorted(maps.Keys(other))) {
			return fmt.Errorf("%s has %d lines, %s has %d, or others", args[0], len(first), path, len(other))
		}
		for name, want := range first {
			if got := other[name]; !slices.Equal(want, got) {
				return fmt.Errorf("%s: %s says %q, %s says %q", name, args[0], want, path, got)
			}
		}
	}
	fmt.Printf("%d lines, %d findings, the same in %d files\n", len(first), reports, len(args))
	return nil
}

// readFindings reads what lineworthy batch, opa exec or a server has written.
func readFindings(path string) (findings, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	out := findings{}
	for d := json.NewDecoder(bytes.NewReader(text)); d.More(); {
		var doc struct {
			At, Path string
			Error    json.RawMessage
			Findings []map[string]any
			Result   json.RawMessage
		}
		if err := d.Decode(&doc); err != nil {
			return nil, fmt.Errorf("%s: %w", path, err)
		}
		if doc.Error != nil {
			return nil, fmt.Errorf("%s: %s%s: %s", path, doc.At, doc.Path, doc.Error)
		}
		if err := out.add(doc.At, doc.Path, doc.Findings, doc.Result); err != nil {
			return nil, fmt.Errorf("%s: %w", path, err)
		}
	}
	return out, nil
}

func (f findings) add(at, path string, ours []map[string]any, result json.RawMessage) error {
	if at != "" {
		f[filepath.Base(at)] = flat(ours)
		return nil
	}
	if path != "" {
		return f.stock(path, result)
	}
	var many []struct { // opa exec gives all lines in one document
		Path   string
		Error  json.RawMessage
		Result json.RawMessage
	}
	if err := json.Unmarshal(result, &many); err != nil {
		return err
	}
	for _, x := range many {
		if x.Error != nil {
			return fmt.Errorf("%s: %s", x.Path, x.Error)
		}
		if err := f.stock(x.Path, x.Result); err != nil {
			return err
		}
	}
	return nil
}

// stock reads findings by area and fault.
func (f findings) stock(path string, result json.RawMessage) error {
	var areas map[string]map[string][]map[string]any
	if err := json.Unmarshal(result, &areas); err != nil {
		return err
	}
	var all []map[string]any
	for area, faults := range areas {
		for fault, reports := range faults {
			for _, r := range reports {
				r["rule"] = area + "/" + fault
				all = append(all, r)
			}
		}
	}
	f[filepath.Base(path)] = flat(all)
	return nil
}

// flat gives each report as one text with sorted keys. The severity is not what a stock engine knows.
func flat(all []map[string]any) []string {
	out := []string{}
	for _, r := range all {
		delete(r, "severity")
		text, err := json.Marshal(r)
		if err != nil {
			panic(err) // it was JSON
		}
		out = append(out, string(text))
	}
	slices.Sort(out)
	return out
}
