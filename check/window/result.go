package window

import (
	"lineworthy/check/facts"
	"lineworthy/check/report"
	"lineworthy/check/units"
)

// Schema names the shape of the document. It changes when a key is renamed or changes meaning.
const Schema = "lineworthy/window/1"

// Result is the allowed region of one line and of its runs and sections. Temperatures are °C, pressures kPa gauge; the
// texts beside them are in the units of the sheet.
type Result struct {
	Schema   string       `json:"schema"`
	Line     string       `json:"line"`
	Title    string       `json:"title,omitempty"`
	Sheet    string       `json:"sheet"`
	Units    report.Units `json:"units"`
	Scopes   []Scope      `json:"scopes"` // the line first, then each run, then its sections
	Vapours  []Vapour     `json:"vapour_pressures"`
	Cautions []string     `json:"cautions"`
}

// Scope is the line, a run, or a section: a stretch between two devices that can close.
type Scope struct {
	ID       string     `json:"id"`
	Kind     string     `json:"kind"` // line, run, section
	Run      string     `json:"run,omitempty"`
	From     string     `json:"from,omitempty"`
	To       string     `json:"to,omitempty"`
	Known    bool       `json:"known"` // false: the region can only be smaller than shown
	Empty    string     `json:"empty,omitempty"`
	Lowest   *Edge      `json:"lowest,omitempty"`  // absent: no part states one
	Highest  *Edge      `json:"highest,omitempty"` // likewise
	Pieces   []Piece    `json:"pieces"`
	Breaks   []Break    `json:"breakpoints"`
	Points   []Point    `json:"points"`
	Unknown  []Unknown  `json:"unknown"`
	Suits    []Suit     `json:"materials"` // where the knowledge of material and fluid ends, coldest first
	Curves   []VapourAt `json:"vapour_meets_limit"`
	Strength int        `json:"items"` // how many things hold pressure here
}

// Edge is where the region ends in temperature.
type Edge struct {
	C     float64  `json:"temperature_c"`
	Text  string   `json:"temperature"`
	By    []string `json:"by"`
	Limit bool     `json:"limit"` // false: beyond it nothing is known
}

// Piece is one smooth piece of the upper side: between its ends a straight line, or a hyperbola over °C.
type Piece struct {
	FromC   float64  `json:"from_c"`
	ToC     float64  `json:"to_c"`
	FromKPa float64  `json:"from_kpa"`
	ToKPa   float64  `json:"to_kpa"`
	Shape   string   `json:"shape"` // straight, hyperbola
	Weakest []string `json:"weakest"`
	form    form
}

// Break is one breakpoint of the upper side: what is allowed at that temperature, and just above it where that differs.
type Break struct {
	C        float64  `json:"temperature_c"`
	Text     string   `json:"temperature"`
	KPa      float64  `json:"allowed_kpa"`
	Allowed  string   `json:"allowed"`
	AboveKPa *float64 `json:"just_above_kpa,omitempty"`
	Above    string   `json:"just_above,omitempty"`
	Weakest  []string `json:"weakest"` // from here on
}

// Point is one pressure case with the hottest temperature it comes with.
type Point struct {
	Case    string  `json:"case"`
	Run     string  `json:"run,omitempty"`
	From    string  `json:"from_part,omitempty"`
	Cause   string  `json:"cause"`
	C       float64 `json:"temperature_c"`
	KPa     float64 `json:"pressure_kpa"`
	Text    string  `json:"text"`
	Held    string  `json:"held"`            // yes, no, not-known
	Least   string  `json:"least,omitempty"` // of what it reaches, the thing with the least to spare
	HaveKPa float64 `json:"have_kpa,omitempty"`
	Margin  string  `json:"margin,omitempty"`
	duty    bool
	spare   units.PressureDifference
	reaches []facts.Place
}

// Unknown is a thing whose limit is not known, or a case whose pressure is not.
type Unknown struct {
	Part string `json:"part"`
	What string `json:"what"`
	Why  string `json:"why"`
	Ask  string `json:"ask,omitempty"`
}

// Suit is how hot a material is known to bear a fluid here; no temperature when it does not bear it at all.
type Suit struct {
	Material string   `json:"material"`
	Fluid    string   `json:"fluid"`
	Parts    []string `json:"parts"`
	ToC      *float64 `json:"to_c,omitempty"`
	Text     string   `json:"text"`
	Limited  bool     `json:"limited"`
}

// Vapour is the vapour pressure of one liquid.
type Vapour struct {
	Fluid   string   `json:"fluid"`
	Runs    []string `json:"runs"`
	BoilsC  *float64 `json:"boils_c,omitempty"` // at the place's air pressure
	BoilsAt string   `json:"boils,omitempty"`
	FromC   float64  `json:"from_c"` // what the equation is good for
	ToC     float64  `json:"to_c"`
	Points  []XY     `json:"points"`
	Rows    []Row    `json:"rows"` // at round temperatures and where the line works, in the units of the sheet
	at      func(c float64) (float64, bool)
}

// VapourAt is where a vapour pressure meets the upper side of the region.
type VapourAt struct {
	Fluid string  `json:"fluid"`
	C     float64 `json:"temperature_c"`
	Text  string  `json:"text"`
}

// Row is one line of a printed curve.
type Row struct {
	Text  string `json:"temperature"`
	Gauge string `json:"pressure"`
}

// XY is one point of a curve.
type XY struct {
	C   float64 `json:"temperature_c"`
	KPa float64 `json:"pressure_kpa"`
}
