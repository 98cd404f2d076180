package rules

import (
	_ "embed"
	"fmt"
	"sync"

	"gopkg.in/yaml.v3"
)

//go:embed coverage.yaml
var coverageText []byte

// Paragraph is one paragraph of a law or standard that was considered, and what became of it.
type Paragraph struct {
	ID         string   `yaml:"id" json:"id"` // letter and number of the list, e.g. N10
	Document   string   `yaml:"document" json:"document"`
	Clause     string   `yaml:"clause" json:"clause"`
	Says       string   `yaml:"says" json:"says"` // in our own words
	Standing   string   `yaml:"standing" json:"standing"`
	Rules      []string `yaml:"rules" json:"rules"`                         // ids of the rules that judge it
	General    bool     `yaml:"general" json:"general"`                     // they judge it for every line and do not cite it
	OutOfScope string   `yaml:"out_of_scope" json:"out_of_scope,omitempty"` // why it, or what of it, is not judged
}

// Judged says how far rules judge the paragraph: judged, partly or not.
func (p Paragraph) Judged() string {
	switch {
	case len(p.Rules) == 0:
		return "not"
	case p.OutOfScope != "":
		return "partly"
	}
	return "judged"
}

// Coverage lists every paragraph that was considered, in the order of its list. The error means that the program is
// broken. The caller must not change the list.
var Coverage = sync.OnceValues(func() ([]Paragraph, error) {
	var out []Paragraph
	if err := yaml.Unmarshal(coverageText, &out); err != nil {
		return nil, fmt.Errorf("rules: coverage.yaml: %w", err)
	}
	return out, nil
})
