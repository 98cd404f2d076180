package facts

// Section is a stretch of a run between two devices that can close, so that what stands in it can be shut in.
type Section struct {
	ID         string `json:"id"`
	Run        string `json:"run"`
	From       string `json:"from"`
	To         string `json:"to"`
	Liquid     bool   `json:"liquid"`
	Hose       bool   `json:"has_hose"`
	Ammonia    bool   `json:"carries_ammonia"`
	LPG        bool   `json:"carries_lpg"`
	Relieved   bool   `json:"relieved"` // a relief device stands in the section
	ReliefKPa  Int    `json:"relief_set_kpa,omitzero" ask:"set pressure of the relief device in the section"`
	Drained    bool   `json:"drained"` // the sheet says that the run is emptied after every transfer
	Warmed     bool   `json:"warmed"`  // the section can get warmer than it was filled
	FilledCK   Int    `json:"filled_ck,omitzero"`
	HottestCK  Int    `json:"hottest_ck,omitzero"`
	BlockedKPa Int    `json:"blocked_kpa,omitzero" ask:"expansion and compressibility of the liquid, or a relief device in the section"` // full of liquid, shut in and warmed
	WeakestKPa Int    `json:"weakest_kpa,omitzero" ask:"rated of every part in the section"`
	Weakest    string `json:"weakest"`
}

// Surge is the pressure peak that one closing device sends back into the run.
type Surge struct {
	ID            string `json:"id"` // the device
	Run           string `json:"run"`
	ClosingStated bool   `json:"closing_stated"` // otherwise it counts as closing at once
	SteadyKPa     Int    `json:"steady_kpa,omitzero" ask:"the pressure in the run before it closes"`
	PeakKPa       Int    `json:"peak_kpa,omitzero" ask:"runs.*.flow, and the size of the parts"` // steady and surge together
	WeakestKPa    Int    `json:"weakest_kpa,omitzero" ask:"rated of every part of the run before the device"`
	Weakest       string `json:"weakest"`
}

// Relief is one relief device, on a vessel or in a run.
type Relief struct {
	ID             string `json:"id"`
	Run            string `json:"run"` // empty for the device of a vessel
	OnVessel       bool   `json:"on_vessel"`
	SetKPa         Int    `json:"set_kpa,omitzero" ask:"set of the relief device"`
	WeakestKPa     Int    `json:"weakest_kpa,omitzero" ask:"rated of every part that the device protects"` // lowest rating of what it protects
	Weakest        string `json:"weakest"`
	WeakestIsHose  bool   `json:"weakest_is_hose"`
	LPGLiquid      bool   `json:"on_lpg_liquid"` // stands between shut-offs on liquid LP-gas
	IsolableStated bool   `json:"isolatable_stated"`
	Isolable       Bool   `json:"isolatable,omitzero" ask:"parts.*.isolatable: can a valve cut it off from what it protects"` // a valve can cut it off from what it protects
	TestedDays     Int    `json:"days_since_test,omitzero" ask:"tested of the relief device"`
	IntervalDays   Int    `json:"test_interval_days,omitzero" ask:"test_interval of the relief device"`
	ZoneA          bool   `json:"zone_a_cylinder"` // fitted to a cylinder of a toxic gas of hazard zone A
}

// Vessel is one vessel at an end of the line.
type Vessel struct {
	ID             string `json:"id"`
	Kind           string `json:"kind,omitzero" words:"cylinder,drum,ibc,tanker,tank,pressure-vessel,tote,process-vessel"`
	Source         bool   `json:"is_source"`
	Target         bool   `json:"is_target"`
	Closed         bool   `json:"closed"` // the sheet does not say that its vent is open
	Padded         bool   `json:"padded"`
	Flammable      bool   `json:"holds_flammable"`
	Chlorine       bool   `json:"holds_chlorine"`
	Liquid         bool   `json:"holds_liquid"`
	HasRelief      bool   `json:"has_relief"`
	RatedKPa       Int    `json:"rated_kpa,omitzero" ask:"vessels.*.rated, from its plate"`
	TestKPa        Int    `json:"test_pressure_kpa,omitzero" ask:"vessels.*.test_pressure, from its plate"`
	DischargeKPa   Int    `json:"discharge_limit_kpa,omitzero" ask:"vessels.*.discharge_limit: the highest discharge pressure marked on it"`
	PadKPa         Int    `json:"pad_kpa,omitzero" ask:"the highest pressure of the gas pushed in, regulator sound"`
	SupplyKPa      Int    `json:"supply_kpa,omitzero" ask:"the supply pressure of the gas pushed in"`
	FullCK         Int    `json:"liquid_full_ck,omitzero" ask:"volume, filled and the density of the liquid"` // where the liquid fills the vessel
	HottestCK      Int    `json:"hottest_ck,omitzero" ask:"the highest temperature of the fluid, or site.highest"`
	FilledPermille Int    `json:"filled_permille,omitzero" ask:"vessels.*.filled"`
	FillLimit      Int    `json:"fill_limit_permille,omitzero" ask:"the density of the liquid at 15 and 50 °C"` // degree of filling for transport, ADR 4.2.1.9.2
	AfterPermille  Int    `json:"after_permille,omitzero" ask:"volume and filled of the destination, and the quantity of the run"`
	QuantitySaid   bool   `json:"quantity_stated"`
	VacuumLikely   bool   `json:"vacuum_likely"` // something can pull less than the air's pressure in it
	VacuumCause    string `json:"vacuum_cause"`
	VacuumNeedKPa  Int    `json:"vacuum_need_kpa,omitzero" ask:"how far below the air the vessel can be pulled"` // below the air, as a positive figure
	VacuumHaveKPa  Int    `json:"vacuum_have_kpa,omitzero" ask:"vessels.*.vacuum: the lowest pressure on its plate, or of its maker"`
	Bonded         Bool   `json:"bonded,omitzero" ask:"vessels.*.bonded: is it connected to earth"`
	RoadTank       bool   `json:"may_be_road_tank"`                                                                              // a tanker, or of no kind stated
	PhaseMarked    Bool   `json:"phase_marked,omitzero" ask:"points.*.marked: what the label at every point of the vessel says"` // each point says liquid or vapour
}

// Gauge is one pressure gauge.
type Gauge struct {
	ID            string `json:"id"`
	FullKPa       Int    `json:"full_scale_kpa,omitzero" ask:"range of the gauge"`
	DutyKPa       Int    `json:"duty_kpa,omitzero" ask:"the pressure at duty"`
	SharePermille Int    `json:"duty_share_permille,omitzero" ask:"range of the gauge, and the pressure at duty"` // duty over full scale
}

// Flow is the liquid flow of one run at the rate the sheet plans.
type Flow struct {
	ID                string `json:"id"` // the run
	Stated            bool   `json:"flow_stated"`
	Flammable         bool   `json:"carries_flammable"`
	Accumulator       Bool   `json:"carries_accumulator,omitzero" ask:"the conductivity of the liquid"`
	Part              string `json:"narrowest"`
	VelocityMMPS      Int    `json:"velocity_mmps,omitzero" ask:"runs.*.flow, and the size of every part"`       // in the narrowest part
	ProductMM2PS      Int    `json:"velocity_bore_mm2ps,omitzero" ask:"runs.*.flow, and the size of every part"` // largest velocity times bore
	OpenTop           bool   `json:"enters_from_above"`                                                          // the inlet is not covered when filling starts
	FineFilter        bool   `json:"fine_filter"`
	ResidenceMS       Int    `json:"residence_ms,omitzero" ask:"length and size of the parts behind the fine filter"` // from a fine filter to the end
	DropKPa           Int    `json:"drop_kpa,omitzero" ask:"viscosity and density of the liquid, length and size of the parts"`
	DriveKPa          Int    `json:"driving_kpa,omitzero" ask:"the pressure at the source and at the destination"`
	FlashKPa          Int    `json:"flashing_margin_kpa,omitzero" ask:"vapour pressure of the liquid, and the pressure along the run"` // lowest pressure along the run less vapour pressure
	Minutes           Int    `json:"transfer_minutes,omitzero"`
	GasFollows        bool   `json:"gas_follows"`                                                                                   // pushed by gas out of a vessel into one with an open vent that does not hold its pressure
	VentSaid          bool   `json:"vent_stated"`                                                                                   // what the vent of the destination passes
	FollowsMLPS       Int    `json:"gas_follows_mlps,omitzero" ask:"length and size of the parts, and the set pressure of the gas"` // the most free gas that comes once the source is empty
	VentMLPS          Int    `json:"vent_mlps,omitzero" ask:"vessels.*.vent_capacity: what the open vent passes at the rated pressure"`
	CylindersSaid     bool   `json:"gas_from_cylinders"`
	CylindersPermille Int    `json:"cylinders_needed_permille,omitzero" ask:"volume and pressure of the cylinder, and the quantity of the run"` // cylinders the transfer takes, in thousandths
}

// Excess is one valve that closes on too much flow. Closing flow and duty round up, the flow of the broken line down.
type Excess struct {
	ID         string `json:"id"`
	Run        string `json:"run"`
	Credited   bool   `json:"credited"` // it stands in a line whose fluid must not run out
	BypassSaid bool   `json:"bypass_stated"`
	CloseMLPS  Int    `json:"closing_flow_mlps,omitzero" ask:"closing_flow of the excess-flow valve, from its plate or data sheet"`
	BrokenMLPS Int    `json:"broken_flow_mlps,omitzero" ask:"broken_flow of the excess-flow valve: what the line passes when the hose behind it is broken, by calculation or test"`
	DutyMLPS   Int    `json:"duty_flow_mlps,omitzero" ask:"runs.*.flow"`
	BypassUM   Int    `json:"bypass_um,omitzero" ask:"bypass of the excess-flow valve: diameter of its equalising hole, 0 mm for none"`
}

// Release is what a burst or a parted hose lets into a room.
type Release struct {
	ID             string `json:"id"` // the run
	Asphyxiant     bool   `json:"asphyxiant"`
	OxygenPermille Int    `json:"oxygen_permille,omitzero" ask:"site.room: free volume of the room, and the gas that can escape"`
	WhipN          Int    `json:"whip_n,omitzero"`      // force of a parted gas hose, shock factor 2 counted
	RestraintN     Int    `json:"restraint_n,omitzero"` // rating of the weakest restraint fitted
	Restrained     bool   `json:"restrained"`           // every gas hose of the run names a restraint
	BoreMM         Int    `json:"bore_mm,omitzero" ask:"size of every hose of the run"`
	Pressure       Int    `json:"pressure_kpa,omitzero" ask:"the highest pressure of the gas in the run"`
}
