package main

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"strconv"

	"lineworthy/testdata/bench/population"
)

// seed makes equal plants on every machine.
const seed = 8

const lines = "testdata/lines"

func makeFiles(args []string) error {
	if len(args) != 4 {
		return fmt.Errorf("want KIND line|plant N DIR")
	}
	n, err := strconv.Atoi(args[2])
	if err != nil {
		return err
	}
	m, err := population.New(lines, args[0], args[1] == "plant", seed)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(args[3], 0o755); err != nil {
		return err
	}
	for i := range n {
		text, err := m.Next()
		if err != nil {
			return err
		}
		if err := os.WriteFile(filepath.Join(args[3], fmt.Sprintf("%06d.json", i)), text, 0o644); err != nil {
			return err
		}
	}
	return nil
}

// variety is how many different lines a stream has; each gets a number of its own.
const variety = 2000

func stream(args []string) error {
	if len(args) != 2 {
		return fmt.Errorf("want KIND N")
	}
	n, err := strconv.Atoi(args[1])
	if err != nil {
		return err
	}
	m, err := population.New(lines, args[0], true, seed)
	if err != nil {
		return err
	}
	var made [][]byte
	w := bufio.NewWriterSize(os.Stdout, 1<<20)
	for i := range n {
		if i < variety {
			text, err := m.Next()
			if err != nil {
				return err
			}
			made = append(made, text)
		}
		text := made[i%variety]
		if i >= variety {
			number(text, i)
		}
		if _, err := w.Write(append(text[:len(text):len(text)], '\n')); err != nil {
			return err
		}
	}
	return w.Flush()
}

// number overwrites the six figures behind every hyphen that has six: the line and all its parts get a new name.
func number(text []byte, n int) {
	figures := fmt.Sprintf("%06d", n%1000000)
	for i := 0; i+7 <= len(text); i++ {
		if text[i] == '-' && sixFigures(text[i+1:i+7]) {
			copy(text[i+1:], figures)
			i += 6
		}
	}
}

func sixFigures(b []byte) bool {
	for _, c := range b {
		if c < '0' || c > '9' {
			return false
		}
	}
	return true
}
