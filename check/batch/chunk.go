package batch

import (
	"context"
	"fmt"
	"iter"
	"sync"
	"time"
)

// chunk is some lines on their way through. It is used again when it has been written.
type chunk struct {
	items []Item
	text  []byte // of all items
	out   []byte
	errs  []broken
	words map[string]int
	done  chan struct{}
}

type broken struct {
	name string
	err  error
}

// chunks gathers the items of a source, with a copy of their texts.
func chunks(source iter.Seq[Item], free *sync.Pool) iter.Seq[*chunk] {
	return func(yield func(*chunk) bool) {
		c := free.Get().(*chunk).empty()
		for i := range source {
			if c.add(i); len(c.items) < chunkLines && len(c.text) < chunkBytes {
				continue
			}
			if !yield(c) {
				return
			}
			c = free.Get().(*chunk).empty()
		}
		if len(c.items) > 0 {
			yield(c)
		}
	}
}

func (c *chunk) empty() *chunk {
	c.items, c.text, c.out, c.errs = c.items[:0], c.text[:0], c.out[:0], c.errs[:0]
	clear(c.words)
	return c
}

// add keeps the text of an item. Items before it may still point to the memory that the text has outgrown, which is as good.
func (c *chunk) add(i Item) {
	start := len(c.text)
	c.text = append(c.text, i.Text...)
	i.Text = c.text[start:len(c.text):len(c.text)]
	c.items = append(c.items, i)
}

func (c *chunk) judge(ctx context.Context, j Judge, deadline time.Duration) {
	for _, i := range c.items {
		a := one(ctx, j, i, deadline)
		if a.Err != nil {
			c.errs = append(c.errs, broken{i.Name, a.Err})
			c.out = append(appendBroken(c.out, i.Name, a.Err), '\n')
			continue
		}
		c.words[a.Word]++
		c.out = append(append(c.out, a.Text...), '\n')
	}
}

// one judges one line. Not even a fault of the program stops the others.
func one(ctx context.Context, j Judge, i Item, deadline time.Duration) (a Answer) {
	defer func() {
		if x := recover(); x != nil {
			a = Answer{Err: fmt.Errorf("fault in the tool, no verdict: %v", x)}
		}
	}()
	if i.Err != nil {
		return Answer{Err: i.Err}
	}
	if deadline > 0 {
		var stop context.CancelFunc
		ctx, stop = context.WithTimeout(ctx, deadline)
		defer stop()
	}
	return j(ctx, i)
}
