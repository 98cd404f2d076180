package inspect

import (
	_ "embed"
	"html/template"
	"strings"
)

//go:embed page.html
var pageText string

var page = template.Must(template.New("page").Funcs(template.FuncMap{
	"inc": func(n int) int { return n + 1 }, "cautions": cautions,
}).Parse(pageText))

// Heading is the item as it is called.
func (i *Item) Heading() string { return i.title() }

// HTML is the list as one page to print on A4 and fill in; it loads nothing and runs nothing.
func (l *List) HTML() (string, error) {
	var b strings.Builder
	err := page.Execute(&b, l)
	return b.String(), err
}
