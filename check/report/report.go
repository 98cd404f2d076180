package report

import (
	"errors"
	"fmt"
	"io"
	"strings"
)

// Options is how a report is laid out. The zero value is a plain report 100 columns wide.
type Options struct {
	Width  int  // columns; 0 or less means 100, and nothing is set narrower than 40
	Colour bool // adds terminal colours to words that say the same without them; the caller decides
	Full   bool // every rule with what it judged, names of missing facts, whole digests
}

// Writer writes one verdict as a report. It refuses a verdict that contradicts itself; nothing is written then.
type Writer func(w io.Writer, v *Verdict, o Options) error

var writers = []struct {
	name  string
	write Writer
}{{"text", Text}, {"json", JSON}, {"markdown", Markdown}, {"html", HTML}, {"sarif", SARIF}, {"junit", JUnit}}

// Formats are the names that For knows.
func Formats() []string {
	var names []string
	for _, f := range writers {
		names = append(names, f.name)
	}
	return names
}

// For is the writer of a format. The error for an unknown name offers the nearest one and lists them all.
func For(name string) (Writer, error) {
	for _, f := range writers {
		if f.name == name {
			return f.write, nil
		}
	}
	hint := ""
	if near := nearest(name, Formats()); near != "" {
		hint = "did you mean " + near + "? "
	}
	return nil, fmt.Errorf("there is no report format %q; %suse one of: %s", name, hint, strings.Join(Formats(), ", "))
}

const (
	usualWidth    = 100
	smallestWidth = 40
)

func (o Options) width() int {
	if o.Width <= 0 {
		return usualWidth
	}
	return max(o.Width, smallestWidth)
}

// ready is a copy of the verdict that is safe to print, or the reasons why it must not be printed.
func ready(v *Verdict) (*Verdict, error) {
	if v == nil {
		return nil, errors.New("there is no verdict to report")
	}
	if err := sound(v); err != nil {
		return nil, err
	}
	return copyOf(v, clean), nil
}
