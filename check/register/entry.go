package register

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"slices"

	"lineworthy/check/report"
)

// Basis is what verdicts rest on apart from the sheets.
type Basis struct {
	Tool  string            `json:"tool"`  // version of the program
	Rules string            `json:"rules"` // SHA-256, hex
	Rows  map[string]string `json:"rows"`  // kind/id of every catalog row against its SHA-256
}

// id is the start of the digest of the whole: a change of any row makes it another.
func (b Basis) id() string {
	text, _ := json.Marshal(b) // maps are sorted; strings cannot fail
	return short(text)
}

func short(text []byte) string {
	sum := sha256.Sum256(text)
	return hex.EncodeToString(sum[:8])
}

// Entry is the summary of one sheet. A sheet that could not be judged has Faults and no Word.
type Entry struct {
	Path       string      `json:"path"`            // from the folder of the register, with slashes
	Sum        string      `json:"sheet"`           // SHA-256 of the file, hex; empty when it has to be tried again
	Basis      string      `json:"basis"`           // id of the Basis
	AsOf       string      `json:"as_of"`           // day the verdict is for, 2006-01-02
	Undated    bool        `json:"undated"`         // the sheet states no day, so the verdict holds for AsOf alone
	Line       string      `json:"line,omitempty"`  // as the sheet names it
	Title      string      `json:"title,omitempty"` //
	Word       report.Word `json:"word,omitempty"`  //
	Stops      int         `json:"stops"`           //
	Conditions int         `json:"conditions"`      // without the values to confirm
	Missing    int         `json:"missing"`         // facts
	First      string      `json:"first,omitempty"` // the first reason for the word
	Found      []string    `json:"found,omitempty"` // rules that found something, "stop area/rule", sorted
	Asks       []string    `json:"asks,omitempty"`  // missing facts, "subject fact", sorted
	Confirm    []Confirm   `json:"confirm,omitempty"`
	Due        []Due       `json:"due,omitempty"`
	Hoses      []Hose      `json:"hoses,omitempty"`
	Rows       []string    `json:"rows,omitempty"`   // catalog rows the verdict rests on, sorted
	Faults     []string    `json:"faults,omitempty"` // of the sheet, in order
	Broken     bool        `json:"broken,omitempty"` // the fault is in the tool, not in the sheet
}

// Confirm is one value to look up before the line is relied on.
type Confirm struct {
	What     string `json:"what"`
	Standing string `json:"standing"`
	Source   string `json:"source"`
	Clause   string `json:"clause,omitempty"`
}

// Due is one date that the sheet brings.
type Due struct {
	Date string `json:"date"` // 2006-01-02, the last day it holds
	What string `json:"what"`
	Part string `json:"part,omitempty"`
	Tag  string `json:"tag,omitempty"`
}

// Hose is one hose of the sheet that bears an identity.
type Hose struct {
	Tag      string   `json:"tag"`
	Part     string   `json:"part"`
	Products []string `json:"products"` // catalog ids of what it carries
	Known    []string `json:"known"`    // catalog ids of every fluid the sheet names: previous contents, flush, pad
}

// holds says whether the entry is still what judging the sheet anew would bring.
func (e *Entry) holds(sum, basis, asOf string) bool {
	return e.Sum != "" && e.Sum == sum && e.Basis == basis && (!e.Undated || e.AsOf == asOf)
}

// bad says whether there is no verdict.
func (e *Entry) bad() bool { return len(e.Faults) > 0 }

func sorted(words []string) []string {
	slices.Sort(words)
	return slices.Compact(words)
}
