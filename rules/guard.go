package rules

import (
	_ "embed"
	"encoding/json"
	"fmt"
)

// A Guard says what must be true of the facts before a rule can find anything. It is worked out from the text of the rule
// and leaves out whatever is not plainly understood, so it may let a rule run for nothing but never keeps one from
// finding: the rules judge, guards only save them work.
type Guard struct {
	Bodies []Body   `json:"bodies"` // the rule can find something only if one of these can be true
	Reads  []string `json:"reads"`  // collections of facts it reads; empty for any
	Alone  *Alone   `json:"alone,omitempty"`
}

// Body has one entry for the line and one for each loop of a rule; every one needs an element on which all signs hold.
type Body []Loop

// Loop is a run over a collection.
type Loop struct {
	Over  string `json:"over"` // "line", "hoses", "pairs.limited" ...
	Signs []Sign `json:"signs,omitempty"`
}

// Sign is one condition on the facts of an element.
type Sign struct {
	Is    string   `json:"is"`
	Fact  string   `json:"fact,omitempty"`
	Words []string `json:"words,omitempty"`
	Sum   []Term   `json:"sum,omitempty"` // of a comparison: the sum and Plus stand left, zero stands right
	Plus  int64    `json:"plus,omitempty"`
}

// Term is a fact times a whole number.
type Term struct {
	Fact  string `json:"fact"`
	Times int64  `json:"times"`
}

// What a Sign can say. A comparison is one of < <= > >= == !=, and holds only where all its facts are known.
const (
	Holds  = "holds"  // known, and not false
	Denied = "denied" // false, or not known
	False  = "false"  // known to be false
	AnyOf  = "any"    // a known word, or one of a list, is in Words
	NoneOf = "none"   // the list has none of Words
	Filled = "filled" // the list is not empty
)

const guardFile = "guards.json"

//go:embed guards.json
var guardText []byte

// guards are those worked out when the rules were last checked, with the digest of the texts they belong to.
type guards struct {
	Digest string           `json:"digest"`
	Rules  map[string]Guard `json:"rules"`
}

// Guards gives the guard of each rule that has one. Texts that differ from those the guards were made from have none:
// their rules always run.
func (s Set) Guards() (map[string]Guard, error) {
	var g guards
	if err := json.Unmarshal(guardText, &g); err != nil {
		return nil, fmt.Errorf("rules: %s: %w", guardFile, err)
	}
	own := s.digest
	if s.site != nil {
		own = s.site.base
	}
	if g.Digest != own {
		return nil, nil
	}
	return g.Rules, nil
}
