package oracle

// Facts is the whole of what is known of one line, as it comes. A number or an answer that is not known is nil, a word empty.
type Facts struct {
	Schema     string       `json:"schema"`
	Line       Line         `json:"line"`
	Fluids     []*Fluid     `json:"fluids"`
	Hoses      []*Hose      `json:"hoses"`
	Services   []*Service   `json:"services"`
	Parts      []*Part      `json:"parts"`
	Regulators []*Regulator `json:"regulators"`
	Capacities []*Capacity  `json:"capacities"`
	Limits     []*Limit     `json:"limits"`
	Joints     []*Joint     `json:"joints"`
	Seals      []*Seal      `json:"seals"`
	Pairs      Pairs        `json:"pairs"`
	Bars       []*Bar       `json:"bars"`
	Meetings   []*Meeting   `json:"meetings"`
	Points     []*Point     `json:"points"`
	Cases      []*Case      `json:"cases"`
	Sections   []*Section   `json:"sections"`
	Surges     []*Surge     `json:"surges"`
	Reliefs    []*Relief    `json:"reliefs"`
	Vessels    []*Vessel    `json:"vessels"`
	Gauges     []*Gauge     `json:"gauges"`
	Flows      []*Flow      `json:"flows"`
	Releases   []*Release   `json:"releases"`
	Tests      []*Test      `json:"tests"`
	TestItems  []*TestItem  `json:"test_items"`
	Steams     []*Steam     `json:"steams"`
	Labels     []*Label     `json:"labels"`
	Closures   []*Closure   `json:"closures"`
	Tails      []*Tail      `json:"tails"`
	ExcessFlow []*Excess    `json:"excess_flows"`
	Values     []*Value     `json:"values"`
	Unknowns   []*Unknown   `json:"unknowns"`
}

// Line is the line as a whole.
type Line struct {
	ID              string   `json:"id"`
	AsOfDay         int64    `json:"as_of_day"`
	Regimes         []string `json:"regimes"`
	Unruled         []string `json:"regimes_without_rules"`
	Flammable       bool     `json:"carries_flammable"`
	Toxic           bool     `json:"carries_toxic"`
	Corrosive       bool     `json:"carries_corrosive"`
	LiquefiedGas    bool     `json:"carries_liquefied_gas"`
	HazardInReach   bool     `json:"hazard_in_reach"`
	Pressurised     bool     `json:"pressurised"`
	RemoteStop      *bool    `json:"remote_stop"`
	AutomaticStop   *bool    `json:"automatic_stop"`
	StopDays        *int64   `json:"days_since_stop_test"`
	Attended        *bool    `json:"attended"`
	PassiveShutoff  bool     `json:"passive_shutoff"`
	Changed         bool     `json:"changed"`
	ChangeInKind    *bool    `json:"change_in_kind"`
	ChangeRecord    bool     `json:"change_record"`
	ChangeReviewed  *int64   `json:"change_authorised_day"`
	ChangeTemporary bool     `json:"change_temporary"`
	ChangeUntil     *int64   `json:"change_until_day"`
	ChangeNotInKind bool     `json:"change_not_in_kind"`
	ChangeBasis     *bool    `json:"change_states_basis"`
	ChangeEffects   *bool    `json:"change_states_effects"`
	ChangeProcedure *bool    `json:"change_states_procedures"`
	ChangeTrained   *bool    `json:"change_trained"`
}

// Pairs mirrors the facts of that name.
type Pairs struct {
	Unsuitable []*Pair `json:"unsuitable"`
	Limited    []*Pair `json:"limited"`
	Suitable   []*Pair `json:"suitable"`
	Unlisted   []*Pair `json:"unlisted"`
}

// Pair mirrors the facts of that name.
type Pair struct {
	ID       string `json:"id"`
	Part     string `json:"part"`
	Layer    string `json:"layer"`
	Contact  string `json:"contact"`
	Material string `json:"material"`
	Fluid    string `json:"fluid"`
	Rating   string `json:"rating"`
	Effect   string `json:"effect"`
	RowToCK  *int64 `json:"row_to_ck"`
	HotCK    *int64 `json:"hottest_ck"`
	ByFamily bool   `json:"by_family"`
}

// Bar mirrors the facts of that name.
type Bar struct {
	ID       string `json:"id"`
	Part     string `json:"part"`
	Material string `json:"material"`
	Fluid    string `json:"fluid"`
	Regime   string `json:"regime"`
	Applies  bool   `json:"regime_applies"`
	Barred   bool   `json:"barred"`
	Why      string `json:"why"`
}

// Case mirrors the facts of that name.
type Case struct {
	ID     string `json:"id"`
	Run    string `json:"run"`
	Part   string `json:"from_part"`
	Case   string `json:"case"`
	KPa    *int64 `json:"pressure_kpa"`
	TempCK *int64 `json:"temperature_ck"`
	Cause  string `json:"cause"`
}

// Value mirrors the facts of that name.
type Value struct {
	ID       string   `json:"id"`
	What     string   `json:"what"`
	Standing string   `json:"standing"`
	Source   string   `json:"source"`
	Clause   string   `json:"clause"`
	Used     []string `json:"used_by"`
}

// Unknown mirrors the facts of that name.
type Unknown struct {
	Subject string `json:"subject"`
	Fact    string `json:"fact"`
	Why     string `json:"why"`
	Ask     string `json:"ask"`
}
