// Package batch judges many lines at once: in order, on all cores, in the memory of a few lines however many there are.
package batch

import (
	"context"
	"errors"
	"fmt"
	"io"
	"iter"
	"runtime"
	"sync"
	"time"
)

// Item is one line to judge, and where it came from.
type Item struct {
	Name string // FILE, or FILE:17 for a line of a file
	Text []byte // its sheet or facts; good only until the next item is drawn
	Err  error  // it could not be read
}

// Answer is what a line comes to.
type Answer struct {
	Word string // the verdict; empty if the line could not be judged
	Text []byte // one line of JSON without its end
	Err  error  // why it could not be judged
}

// Judge judges one line at a time. It must not keep the text.
type Judge func(ctx context.Context, i Item) Answer

// Options say how a batch is run.
type Options struct {
	Workers  int                       // all cores when 0
	Deadline time.Duration             // for each line; none when 0
	Progress func(lines int)           // told after every chunk, by one goroutine
	Broken   func(i string, err error) // told of every line that could not be judged, in order, by the same
}

// Summary counts what a batch came to.
type Summary struct {
	Lines  int
	Broken int            // lines that could not be judged
	Words  map[string]int // verdicts
}

const (
	chunkLines = 64        // enough that handing over costs nothing
	chunkBytes = 256 << 10 // and no more than this, when lines are long
)

// Run judges every item of the source and writes one line of JSON for each, in their order. Every worker gets a judge of
// its own. A line that cannot be judged is reported and does not stop the others; the error is that of the writer, or of ctx.
func Run(ctx context.Context, source iter.Seq[Item], judge func() Judge, w io.Writer, o Options) (Summary, error) {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	workers := o.Workers
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	todo, order := make(chan *chunk), make(chan *chunk, 2*workers) // order is what bounds the chunks under way
	free := sync.Pool{New: func() any { return &chunk{words: map[string]int{}, done: make(chan struct{}, 1)} }}
	go func() {
		defer close(order)
		defer close(todo)
		for c := range chunks(source, &free) {
			select {
			case order <- c:
			case <-ctx.Done():
				return
			}
			todo <- c
		}
	}()
	var wait sync.WaitGroup
	for range workers {
		wait.Go(func() {
			j := judge()
			for c := range todo {
				c.judge(ctx, j, o.Deadline)
				c.done <- struct{}{}
			}
		})
	}
	sum, err := collect(order, &free, w, o)
	if err != nil {
		stop()
		for c := range order { // let the others end
			<-c.done
		}
	}
	wait.Wait()
	return sum, errors.Join(err, ctx.Err())
}

// collect writes the chunks in their order.
func collect(order <-chan *chunk, free *sync.Pool, w io.Writer, o Options) (Summary, error) {
	sum := Summary{Words: map[string]int{}}
	for c := range order {
		<-c.done
		if _, err := w.Write(c.out); err != nil {
			return sum, fmt.Errorf("batch: %w", err)
		}
		sum.Lines += len(c.items)
		sum.Broken += len(c.errs)
		for word, n := range c.words {
			sum.Words[word] += n
		}
		for _, b := range c.errs {
			if o.Broken != nil {
				o.Broken(b.name, b.err)
			}
		}
		if o.Progress != nil {
			o.Progress(sum.Lines)
		}
		free.Put(c)
	}
	return sum, nil
}
