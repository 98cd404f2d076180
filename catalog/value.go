package catalog

// Standing says how a value is known. The order is from strongest to weakest.
type Standing string

// The standings a catalog value or a line sheet may carry.
const (
	Site      Standing = "site"      // nameplate, certificate or supplier letter named by the site
	Published Standing = "published" // the document itself was read
	Restated  Standing = "restated"  // read in someone's rendering of the document
	Computed  Standing = "computed"  // arithmetic on values of known standing
	Recalled  Standing = "recalled"  // from memory of the named document
	Practice  Standing = "practice"  // common practice, no source
)

// Firm reports whether a favourable value of this standing needs no confirmation before it is relied on.
func (s Standing) Firm() bool {
	switch s {
	case Site, Published, Restated, Computed:
		return true
	}
	return false
}

// Origin is the provenance every value carries: which document, where in it, and how that is known.
type Origin struct {
	Source   string   `yaml:"source,omitempty"` // id of a file in sources/; empty only for practice
	Clause   string   `yaml:"clause,omitempty"` // paragraph, table or page
	Standing Standing `yaml:"standing"`
	Sure     string   `yaml:"sure,omitempty"` // high, medium or low: how sure that the figure is right, given its standing
	Note     string   `yaml:"note,omitempty"` // a second reading, an edition trap, a reason
}

// Number is one figure with its provenance; the unit is in the name of the key that holds it.
type Number struct {
	Value  float64 `yaml:"value"`
	Origin `yaml:",inline"`
}

// Text is one word or phrase with its provenance.
type Text struct {
	Value  string `yaml:"value"`
	Origin `yaml:",inline"`
}

// Flag is one yes-or-no statement with its provenance. An absent flag is unknown, not false.
type Flag struct {
	Value  bool `yaml:"value"`
	Origin `yaml:",inline"`
}

// List is a set of words that share one provenance.
type List struct {
	Values []string `yaml:"values"`
	Origin `yaml:",inline"`
}

// Point is one row of a rating table: temperature in degrees Celsius against bar gauge or a factor.
type Point struct {
	C     float64 `yaml:"c"`
	Value float64 `yaml:"value"`
}
