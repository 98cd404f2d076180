package report

// Region is the pressure and temperature at which every part of the line holds, with the cases beside it. Numbers are for
// drawing; the texts are in the units of the sheet.
type Region struct {
	Span     string        `json:"span"`            // from which temperature to which, and what ends it
	Complete bool          `json:"complete"`        // false: the region can only be smaller than shown
	Empty    string        `json:"empty,omitempty"` // why there is none
	Upper    []Spot        `json:"upper"`           // the upper side, coldest first; two at one temperature are a step
	Breaks   []RegionBreak `json:"breakpoints"`
	Cases    []RegionCase  `json:"cases"`
	Vapours  []RegionCurve `json:"vapour_pressures"`
}

// Spot is one point of the picture.
type Spot struct {
	CK  int64 `json:"temperature_ck"` // hundredths of a kelvin
	KPa int64 `json:"pressure_kpa"`   // gauge
}

// RegionBreak is where the upper side turns.
type RegionBreak struct {
	Temperature string `json:"temperature"`
	Allowed     string `json:"allowed"`
	Above       string `json:"just_above,omitempty"`
	Weakest     string `json:"weakest"` // from here on
}

// RegionCase is one pressure case with the hottest temperature it comes with.
type RegionCase struct {
	Run   string `json:"run,omitempty"`
	Case  string `json:"case"`
	At    Spot   `json:"at"`
	Text  string `json:"text"`
	Held  string `json:"held"` // yes, no, not-known
	Least string `json:"least,omitempty"`
	Spare string `json:"margin,omitempty"`
}

// RegionCurve is the vapour pressure of one liquid.
type RegionCurve struct {
	Fluid string `json:"fluid"`
	Spots []Spot `json:"points"`
}
