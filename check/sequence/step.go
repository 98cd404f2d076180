package sequence

// Step is one thing a person does.
type Step struct {
	Do       string `yaml:"do" json:"do"`                                 // one of Actions
	Run      string `yaml:"run,omitempty" json:"run,omitempty"`           // wanted for the item source
	Item     string `yaml:"item,omitempty" json:"item,omitempty"`         // part id, vessel, or source
	Pressure string `yaml:"pressure,omitempty" json:"pressure,omitempty"` // of set, e.g. 2 bar(g); none backs off, nothing is that of the sheet
	Quantity string `yaml:"quantity,omitempty" json:"quantity,omitempty"` // of transfer and flush, e.g. 900 L
	Fluid    string `yaml:"fluid,omitempty" json:"fluid,omitempty"`       // of flush: its name under fluids; may be left away when there is one
	To       string `yaml:"to,omitempty" json:"to,omitempty"`             // of flush: drain when it leaves the line before the destination; of vent: closed or open
	Slowly   bool   `yaml:"slowly,omitempty" json:"slowly,omitempty"`     // of open: over seconds, not with a jerk
	Text     string `yaml:"text,omitempty" json:"text,omitempty"`         // for the reader; judged by nobody

	line int
}

// Sequence is what a file holds.
type Sequence struct {
	Line  string `yaml:"line" json:"line"`
	Steps []Step `yaml:"steps" json:"steps"`
}

// Actions are the words of do, with what each wants as item.
func Actions() []string {
	return []string{"check", "bond", "connect", "open", "close", "set", "start", "stop", "transfer", "drain", "flush", "vent", "disconnect"}
}
