package report

// Schema names the shape of the verdict document.
const Schema = "lineworthy/verdict/1"

// Word is the answer in one word.
type Word string

// The four answers, from best to worst knowledge of the line.
const (
	Fit         Word = "fit"
	Conditional Word = "conditional"
	Unproven    Word = "unproven"
	Unfit       Word = "unfit"
)

// Verdict is everything a report shows about one line. Every report format is a function of this document alone.
type Verdict struct {
	Schema    string     `json:"schema"`
	Tool      Tool       `json:"tool"`
	Line      string     `json:"line"`
	Title     string     `json:"title,omitempty"`
	Sheet     string     `json:"sheet"` // path as given
	AsOf      string     `json:"as_of"` // 2006-01-02
	Regimes   []string   `json:"regimes"`
	Runs      []Run      `json:"runs"` // the line as it is laid out, for drawing
	Units     Units      `json:"units"`
	Word      Word       `json:"verdict"`
	Reason    string     `json:"reason"` // one sentence: why this word
	Governing *Governing `json:"governing,omitempty"`
	Findings  []Finding  `json:"findings"`
	Confirm   []Confirm  `json:"confirm"`
	Unjudged  []Unjudged `json:"unjudged"`
	Judged    []Judged   `json:"judged"`
	Cases     []Case     `json:"cases"`
	Flips     []Flip     `json:"flips"`            // empty unless asked for
	Region    *Region    `json:"region,omitempty"` // absent in batches
	Cautions  []string   `json:"cautions"`
	Digests   Digests    `json:"digests"`
}

// Tool says which program and engine made the verdict.
type Tool struct {
	Name    string `json:"name"`
	Version string `json:"version"`
	Engine  string `json:"engine"` // rules engine and its version
}

// Run is one row of parts from its source to its destination.
type Run struct {
	Name    string   `json:"name"`
	From    string   `json:"from"`
	To      string   `json:"to"`
	Carries []string `json:"carries"` // names of the fluids
	Parts   []Part   `json:"parts"`
}

// Part is one part of a run. A branch sits beside the flow.
type Part struct {
	ID     string `json:"id"`
	Kind   string `json:"kind"`
	Name   string `json:"name,omitempty"`
	Branch bool   `json:"branch"`
}

// Flip is the nearest value of one number of the sheet that changes the answer.
type Flip struct {
	Input    string `json:"input"`
	Now      string `json:"now"`
	At       string `json:"at"`
	Permille int64  `json:"change_permille"` // change over the value now, or for a temperature over the range looked through
	Word     Word   `json:"verdict"`         // the answer beyond it
}

// Units are the units of the sheet, which the numbers are shown in.
type Units struct {
	Pressure    string `json:"pressure"`    // a gauge unit, e.g. bar(g)
	Temperature string `json:"temperature"` // e.g. °C
	Length      string `json:"length"`      // e.g. mm
}

// Governing is the part that has the least to spare, and the case that takes it there.
type Governing struct {
	Part    string `json:"part"`
	What    string `json:"what"`
	Case    string `json:"case"`
	HaveKPa int64  `json:"have_kpa"`
	NeedKPa int64  `json:"need_kpa"`
	Have    string `json:"have"`
	Need    string `json:"need"`
	Margin  string `json:"margin"` // have less need, signed
}

// Finding is one thing a rule says, in words and numbers.
type Finding struct {
	Rule     string            `json:"rule"`
	Severity string            `json:"severity"` // stop, condition, note
	Title    string            `json:"title"`
	Subject  string            `json:"subject"`
	Part     string            `json:"part,omitempty"`
	Case     string            `json:"case,omitempty"`
	Message  string            `json:"message"`
	Have     string            `json:"have,omitempty"`
	Need     string            `json:"need,omitempty"`
	Margin   string            `json:"margin,omitempty"`
	Action   string            `json:"action"`
	Basis    []Basis           `json:"basis"`
	Position *Position         `json:"position,omitempty"` // in the sheet
	Numbers  map[string]int64  `json:"numbers,omitempty"`
	Words    map[string]string `json:"words,omitempty"`
}

// Basis is the document a finding rests on and how that is known.
type Basis struct {
	Document string `json:"document"`
	Edition  string `json:"edition,omitempty"`
	Clause   string `json:"clause,omitempty"`
	Standing string `json:"standing"`
}

// Position is a place in the sheet, counted from 1.
type Position struct {
	Line int `json:"line"`
	Col  int `json:"column"`
}

// Confirm is one favourable value that must be looked up before the line is relied on.
type Confirm struct {
	What     string   `json:"what"`
	Standing string   `json:"standing"`
	Source   string   `json:"source"`
	Clause   string   `json:"clause,omitempty"`
	UsedBy   []string `json:"used_by"`
}

// Unjudged is one missing fact, and everything that could not be judged for want of it.
type Unjudged struct {
	Subject string   `json:"subject"`
	Fact    string   `json:"fact"`
	Why     string   `json:"why"`
	Ask     string   `json:"ask"` // what to find out, and where to write it
	Rules   []string `json:"rules"`
}

// Judged says for one rule what it was applied to.
type Judged struct {
	Rule          string   `json:"rule"`
	Title         string   `json:"title"`
	Severity      string   `json:"severity"`
	Judged        []string `json:"judged"`
	NotApplicable []string `json:"not_applicable"`
	CouldNot      []string `json:"could_not_judge"`
	Found         int      `json:"findings"`
}

// Case is one operating situation and the pressure it can bring.
type Case struct {
	Run         string `json:"run"`
	From        string `json:"from_part"`
	Case        string `json:"case"`
	Pressure    string `json:"pressure"`
	KPa         int64  `json:"pressure_kpa"`
	Temperature string `json:"temperature,omitempty"`
	Cause       string `json:"cause"`
}

// Digests are SHA-256 sums in hex of what the verdict rests on.
type Digests struct {
	Sheet   string            `json:"sheet"`
	Facts   string            `json:"facts"`
	Rules   string            `json:"rules"`
	Catalog map[string]string `json:"catalog"` // kind/id of every row used
	Site    string            `json:"site,omitempty"`
}
