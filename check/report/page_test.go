package report

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// element is one element of a page with what the tests look at.
type element struct {
	name  string
	attrs map[string]string
	text  string // the text directly in it
}

// elements reads a page with a strict XML reader: it is written so that both kinds of reader agree on it.
func elements(t *testing.T, page string) []*element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(page))
	var all, stack []*element
	for {
		token, err := d.Token()
		if err == io.EOF {
			require.Empty(t, stack)
			return all
		}
		require.NoError(t, err)
		switch x := token.(type) {
		case xml.StartElement:
			e := &element{name: x.Name.Local, attrs: map[string]string{}}
			for _, a := range x.Attr {
				e.attrs[a.Name.Local] = a.Value
			}
			all, stack = append(all, e), append(stack, e)
		case xml.EndElement:
			stack = stack[:len(stack)-1]
		case xml.CharData:
			if len(stack) > 0 {
				stack[len(stack)-1].text += string(x)
			}
		}
	}
}

func pageOf(t *testing.T, v *Verdict) []*element {
	return elements(t, written(t, HTML, v, Options{}))
}
