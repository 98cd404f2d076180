package oracle

// Label mirrors the facts of that name.
type Label struct {
	ID       string `json:"id"`
	A        string `json:"a"`
	B        string `json:"b"`
	LabelA   string `json:"label_a"`
	LabelB   string `json:"label_b"`
	Likeness string `json:"likeness"`
	Coupling string `json:"coupling"`
	Keyed    bool   `json:"keyed"`
}

// Closure mirrors the facts of that name.
type Closure struct {
	ID       string `json:"id"`
	Form     string `json:"form"`
	Pressure bool   `json:"under_pressure"`
	Hazard   bool   `json:"holds_hazard"`
}

// Tail mirrors the facts of that name.
type Tail struct {
	ID         string `json:"id"`
	TailUM     *int64 `json:"tail_um"`
	HoseUM     *int64 `json:"hose_um"`
	Clamped    bool   `json:"clamp_stated"`
	OutsideUM  *int64 `json:"outside_um"`
	ClampLeast *int64 `json:"clamp_least_um"`
	ClampMost  *int64 `json:"clamp_most_um"`
}

// Excess mirrors the facts of that name.
type Excess struct {
	ID         string `json:"id"`
	Run        string `json:"run"`
	Credited   bool   `json:"credited"`
	BypassSaid bool   `json:"bypass_stated"`
	CloseMLPS  *int64 `json:"closing_flow_mlps"`
	BrokenMLPS *int64 `json:"broken_flow_mlps"`
	DutyMLPS   *int64 `json:"duty_flow_mlps"`
	BypassUM   *int64 `json:"bypass_um"`
}
