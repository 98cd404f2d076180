package catalog

import (
	_ "embed"
	"slices"
	"sync"
)

//go:embed tables/reactions.yaml
var reactionFile []byte

// Reaction is two reaction groups that must not meet, and what they make.
type Reaction struct {
	A       string `yaml:"a"`
	B       string `yaml:"b"`
	Product string `yaml:"product"` // what comes of it, in words
	Origin  `yaml:",inline"`
}

// Between says whether one fluid is in one group and the other in the other.
func (r Reaction) Between(x, y []string) bool {
	return slices.Contains(x, r.A) && slices.Contains(y, r.B) || slices.Contains(x, r.B) && slices.Contains(y, r.A)
}

var reactions = sync.OnceValues(func() ([]Reaction, error) {
	var rows []Reaction
	err := strict("tables/reactions.yaml", reactionFile, &rows)
	return rows, err
})

// Reactions are all rows of tables/reactions.yaml in file order, worst first. The error is a fault of that file.
func (c *Catalog) Reactions() ([]Reaction, error) { return reactions() }
