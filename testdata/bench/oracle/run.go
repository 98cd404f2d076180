package oracle

import (
	"bytes"
	"fmt"
	"io"
)

// chunkLines are handed over at once, so that handing over costs nothing.
const chunkLines = 64

// chunk is some lines, and their answers once they are judged.
type chunk struct {
	first int // number of its first line
	lines [][]byte
	out   []byte
	err   error
	done  chan struct{}
}

// Run judges the lines of facts in a text and writes one answer for each, in their order. They are called NAME:1 and on.
// It stops at the first that cannot be read.
func Run(name string, facts []byte, w io.Writer, workers int) error {
	var chunks []*chunk
	n := 0
	for t := range bytes.Lines(facts) {
		if n%chunkLines == 0 {
			chunks = append(chunks, &chunk{first: n + 1, done: make(chan struct{})})
		}
		n++
		c := chunks[len(chunks)-1]
		c.lines = append(c.lines, t)
	}
	todo := make(chan *chunk, len(chunks))
	for _, c := range chunks {
		todo <- c
	}
	close(todo)
	for range workers {
		go func() {
			for c := range todo {
				c.judge(name)
			}
		}()
	}
	for i, c := range chunks {
		<-c.done
		if c.err != nil {
			return c.err
		}
		if _, err := w.Write(c.out); err != nil {
			return fmt.Errorf("oracle: %w", err)
		}
		chunks[i] = nil // written, so not kept
	}
	return nil
}

func (c *chunk) judge(name string) {
	defer close(c.done)
	for i, t := range c.lines {
		f, err := Read(t)
		if err != nil {
			c.err = err
			return
		}
		c.out = append(f.Decide(c.out, fmt.Sprintf("%s:%d", name, c.first+i)), '\n')
	}
}
