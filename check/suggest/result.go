package suggest

import "lineworthy/check/report"

// Schema names the shape of the document. It changes when a key is renamed or changes meaning.
const Schema = "lineworthy/suggestions/1"

// Result is what was found for one sheet.
type Result struct {
	Schema   string      `json:"schema"`
	Line     string      `json:"line"`
	Title    string      `json:"title,omitempty"`
	Sheet    string      `json:"sheet"`
	AsOf     string      `json:"as_of"`
	Now      report.Word `json:"verdict_now"`
	Reason   string      `json:"reason_now"`
	Caution  string      `json:"caution"`
	Offers   []Offer     `json:"suggestions"` // best first
	Nothing  []Nothing   `json:"nothing_does"`
	NoPart   []NoPart    `json:"not_cured_by_a_part"`
	Judged   int         `json:"sheets_judged"`
	AnyCured bool        `json:"cured"` // the line is fit or conditional, or one of the suggestions makes it so
}

// Offer is one changed sheet with what the rules say of it.
type Offer struct {
	Word    report.Word       `json:"verdict"`
	Reason  string            `json:"reason"`
	Worst   *report.Governing `json:"worst_margin,omitempty"`
	Parts   int               `json:"parts_replaced"`
	Changes []Change          `json:"changes"`
	OnSite  []string          `json:"work_on_site"`
	Needs   []string          `json:"needs"`
	Left    []Left            `json:"left"`
	Confirm map[string]int    `json:"confirm"` // values to look up, by how they are known
	Text    []byte            `json:"-"`       // the changed sheet
}

// Change is one part, joint or coupling as it is and as it would be.
type Change struct {
	Where   string   `json:"where"`
	Kind    string   `json:"kind"` // hose, body, joint, point, relief
	Before  string   `json:"before"`
	After   string   `json:"after"`
	Catalog []string `json:"catalog"`
}

// Left is one thing that still stands against the changed line.
type Left struct {
	Severity string `json:"severity"` // stop, unknown, condition
	Rule     string `json:"rule"`
	Text     string `json:"text"`
	Action   string `json:"action"`
}

// Nothing is a place for which the catalog holds no part that does, with what such a part would have to do.
type Nothing struct {
	Where string   `json:"where"`
	Tried int      `json:"tried"`
	Wants []string `json:"wants"`
	Near  string   `json:"nearest,omitempty"` // the part that comes nearest
}

// NoPart is a fault whose cure is no part.
type NoPart struct {
	Severity string `json:"severity"`
	Rule     string `json:"rule"`
	Text     string `json:"text"`
	Count    int    `json:"count"`
	Action   string `json:"action"`
}
