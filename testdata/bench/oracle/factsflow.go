package oracle

// Capacity mirrors the facts of that name.
type Capacity struct {
	ID          string `json:"id"`
	Part        string `json:"part"`
	What        string `json:"what"`
	Case        string `json:"case"`
	RatedKPa    *int64 `json:"rated_kpa"`
	DemandKPa   *int64 `json:"demand_kpa"`
	TempCK      *int64 `json:"temperature_ck"`
	Hose        bool   `json:"is_hose"`
	Accumulates bool   `json:"accumulates"`
}

// Meeting mirrors the facts of that name.
type Meeting struct {
	ID        string `json:"id"`
	A         string `json:"a"`
	B         string `json:"b"`
	Where     string `json:"where"`
	Hazardous *bool  `json:"hazardous"`
	Product   string `json:"product"`
	AirPad    bool   `json:"air_pad"`
	Forbidden bool   `json:"forbidden_pad"`
	Why       string `json:"why"`
}

// Point mirrors the facts of that name.
type Point struct {
	ID         string `json:"id"`
	Vessel     string `json:"vessel"`
	Target     bool   `json:"target"`
	Contents   string `json:"contents"`
	SameFluid  *bool  `json:"same_fluid"`
	Hazardous  *bool  `json:"hazardous"`
	Product    string `json:"product"`
	Coupling   string `json:"coupling"`
	Keyed      bool   `json:"keyed"`
	Padlocked  *bool  `json:"padlocked"`
	Marked     *bool  `json:"marked"`
	DistanceMM *int64 `json:"distance_mm"`
	OpenPoint  bool   `json:"open_point"`
	Entry      string `json:"entry"`
	Flammable  bool   `json:"receives_flammable"`
	Liquid     bool   `json:"receives_liquid"`
	Neighbours bool   `json:"neighbours_stated"`
}

// Section mirrors the facts of that name.
type Section struct {
	ID         string `json:"id"`
	Run        string `json:"run"`
	From       string `json:"from"`
	To         string `json:"to"`
	Liquid     bool   `json:"liquid"`
	Hose       bool   `json:"has_hose"`
	Ammonia    bool   `json:"carries_ammonia"`
	LPG        bool   `json:"carries_lpg"`
	Relieved   bool   `json:"relieved"`
	ReliefKPa  *int64 `json:"relief_set_kpa"`
	Drained    bool   `json:"drained"`
	Warmed     bool   `json:"warmed"`
	FilledCK   *int64 `json:"filled_ck"`
	HottestCK  *int64 `json:"hottest_ck"`
	BlockedKPa *int64 `json:"blocked_kpa"`
	WeakestKPa *int64 `json:"weakest_kpa"`
	Weakest    string `json:"weakest"`
}

// Surge mirrors the facts of that name.
type Surge struct {
	ID            string `json:"id"`
	Run           string `json:"run"`
	ClosingStated bool   `json:"closing_stated"`
	SteadyKPa     *int64 `json:"steady_kpa"`
	PeakKPa       *int64 `json:"peak_kpa"`
	WeakestKPa    *int64 `json:"weakest_kpa"`
	Weakest       string `json:"weakest"`
}

// Relief mirrors the facts of that name.
type Relief struct {
	ID             string `json:"id"`
	Run            string `json:"run"`
	OnVessel       bool   `json:"on_vessel"`
	SetKPa         *int64 `json:"set_kpa"`
	WeakestKPa     *int64 `json:"weakest_kpa"`
	Weakest        string `json:"weakest"`
	WeakestIsHose  bool   `json:"weakest_is_hose"`
	LPGLiquid      bool   `json:"on_lpg_liquid"`
	IsolableStated bool   `json:"isolatable_stated"`
	Isolable       *bool  `json:"isolatable"`
	TestedDays     *int64 `json:"days_since_test"`
	IntervalDays   *int64 `json:"test_interval_days"`
	ZoneA          bool   `json:"zone_a_cylinder"`
}

// Vessel mirrors the facts of that name.
type Vessel struct {
	ID             string `json:"id"`
	Kind           string `json:"kind"`
	Source         bool   `json:"is_source"`
	Target         bool   `json:"is_target"`
	Closed         bool   `json:"closed"`
	Padded         bool   `json:"padded"`
	Flammable      bool   `json:"holds_flammable"`
	Chlorine       bool   `json:"holds_chlorine"`
	Liquid         bool   `json:"holds_liquid"`
	HasRelief      bool   `json:"has_relief"`
	RatedKPa       *int64 `json:"rated_kpa"`
	TestKPa        *int64 `json:"test_pressure_kpa"`
	DischargeKPa   *int64 `json:"discharge_limit_kpa"`
	PadKPa         *int64 `json:"pad_kpa"`
	SupplyKPa      *int64 `json:"supply_kpa"`
	FullCK         *int64 `json:"liquid_full_ck"`
	HottestCK      *int64 `json:"hottest_ck"`
	FilledPermille *int64 `json:"filled_permille"`
	FillLimit      *int64 `json:"fill_limit_permille"`
	AfterPermille  *int64 `json:"after_permille"`
	QuantitySaid   bool   `json:"quantity_stated"`
	VacuumLikely   bool   `json:"vacuum_likely"`
	VacuumCause    string `json:"vacuum_cause"`
	VacuumNeedKPa  *int64 `json:"vacuum_need_kpa"`
	VacuumHaveKPa  *int64 `json:"vacuum_have_kpa"`
	Bonded         *bool  `json:"bonded"`
	RoadTank       bool   `json:"may_be_road_tank"`
	PhaseMarked    *bool  `json:"phase_marked"`
}

// Gauge mirrors the facts of that name.
type Gauge struct {
	ID            string `json:"id"`
	FullKPa       *int64 `json:"full_scale_kpa"`
	DutyKPa       *int64 `json:"duty_kpa"`
	SharePermille *int64 `json:"duty_share_permille"`
}

// Flow mirrors the facts of that name.
type Flow struct {
	ID                string `json:"id"`
	Stated            bool   `json:"flow_stated"`
	Flammable         bool   `json:"carries_flammable"`
	Accumulator       *bool  `json:"carries_accumulator"`
	Part              string `json:"narrowest"`
	VelocityMMPS      *int64 `json:"velocity_mmps"`
	ProductMM2PS      *int64 `json:"velocity_bore_mm2ps"`
	OpenTop           bool   `json:"enters_from_above"`
	FineFilter        bool   `json:"fine_filter"`
	ResidenceMS       *int64 `json:"residence_ms"`
	DropKPa           *int64 `json:"drop_kpa"`
	DriveKPa          *int64 `json:"driving_kpa"`
	FlashKPa          *int64 `json:"flashing_margin_kpa"`
	Minutes           *int64 `json:"transfer_minutes"`
	GasFollows        bool   `json:"gas_follows"`
	VentSaid          bool   `json:"vent_stated"`
	FollowsMLPS       *int64 `json:"gas_follows_mlps"`
	VentMLPS          *int64 `json:"vent_mlps"`
	CylindersSaid     bool   `json:"gas_from_cylinders"`
	CylindersPermille *int64 `json:"cylinders_needed_permille"`
}

// Release mirrors the facts of that name.
type Release struct {
	ID             string `json:"id"`
	Asphyxiant     bool   `json:"asphyxiant"`
	OxygenPermille *int64 `json:"oxygen_permille"`
	WhipN          *int64 `json:"whip_n"`
	RestraintN     *int64 `json:"restraint_n"`
	Restrained     bool   `json:"restrained"`
	BoreMM         *int64 `json:"bore_mm"`
	Pressure       *int64 `json:"pressure_kpa"`
}
