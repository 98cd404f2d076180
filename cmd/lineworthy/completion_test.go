package main

import (
	"bytes"
	"strings"
	"testing"

	"github.com/spf13/cobra"
	"github.com/stretchr/testify/assert"
)

// TestEveryFormatFlagCompletes: each command with a --format offers the formats it takes.
func TestEveryFormatFlagCompletes(t *testing.T) {
	seen := 0
	eachCommand(newRoot(streams{nil, new(bytes.Buffer), new(bytes.Buffer)}), func(c *cobra.Command) {
		f := c.Flags().Lookup("format")
		if f == nil {
			return
		}
		seen++
		offer, ok := c.GetFlagCompletionFunc("format")
		if !assert.True(t, ok, c.CommandPath()) {
			return
		}
		words, _ := offer(c, nil, "")
		assert.Contains(t, words, "text", c.CommandPath())
	})
	assert.Greater(t, seen, 5)
}

// TestManPages: no line of text is read as a macro of its own, and no page is without name and synopsis.
func TestManPages(t *testing.T) {
	known := []string{".TH", ".SH", ".PP", ".TP", ".B", ".BR", ".nf", ".fi"}
	eachCommand(newRoot(streams{nil, new(bytes.Buffer), new(bytes.Buffer)}), func(c *cobra.Command) {
		page := manPage(c)
		assert.Contains(t, page, ".SH NAME\n"+manName(c)+` \- `)
		assert.Contains(t, page, ".SH SYNOPSIS\n")
		for _, line := range strings.Split(page, "\n") {
			if strings.HasPrefix(line, ".") || strings.HasPrefix(line, "'") {
				macro, _, _ := strings.Cut(line, " ")
				assert.Contains(t, known, macro, c.CommandPath())
			}
		}
	})
	assert.Equal(t, `\&.PP \e \-`, roff(`.PP \ -`))
}
