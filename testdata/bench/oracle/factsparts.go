package oracle

// Fluid mirrors the facts of that name.
type Fluid struct {
	ID           string `json:"id"`
	Fluid        string `json:"fluid"`
	Name         string `json:"name"`
	Role         string `json:"role"`
	Form         string `json:"form"`
	Air          bool   `json:"air"`
	Flammable    bool   `json:"flammable"`
	Toxic        bool   `json:"toxic"`
	Corrosive    bool   `json:"corrosive"`
	Oxidiser     bool   `json:"oxidiser"`
	Dry          *bool  `json:"dry"`
	OilFree      *bool  `json:"oil_free"`
	HighestCK    *int64 `json:"highest_ck"`
	LowestCK     *int64 `json:"lowest_ck"`
	Accumulator  *bool  `json:"accumulator"`
	DutyKPa      *int64 `json:"duty_kpa"`
	Strength     *int64 `json:"concentration_permille"`
	StrengthFits *bool  `json:"concentration_fits"`
}

// Hose mirrors the facts of that name.
type Hose struct {
	ID             string   `json:"id"`
	Run            string   `json:"run"`
	Class          string   `json:"class"`
	Medium         string   `json:"medium"`
	Flammable      bool     `json:"carries_flammable"`
	Ammonia        bool     `json:"carries_ammonia"`
	LPG            bool     `json:"carries_lpg"`
	LiquefiedGas   bool     `json:"carries_liquefied_gas"`
	Gas            bool     `json:"carries_gas"`
	Toxic          bool     `json:"carries_toxic"`
	Oxygen         bool     `json:"carries_oxygen"`
	Accumulator    *bool    `json:"carries_accumulator"`
	RatedKPa       *int64   `json:"rated_kpa"`
	BurstKPa       *int64   `json:"burst_kpa"`
	RatioPermille  *int64   `json:"burst_ratio_permille"`
	ClassRatio     *int64   `json:"class_ratio_permille"`
	TestedAtKPa    *int64   `json:"test_pressure_kpa"`
	AssignedStated bool     `json:"assigned_stated"`
	TagMatches     *bool    `json:"tag_matches"`
	MarksStated    bool     `json:"marks_stated"`
	MarkedAmmonia  *bool    `json:"marked_ammonia"`
	MarkedLPG      *bool    `json:"marked_lpg"`
	MarkedPressure *bool    `json:"marked_pressure"`
	MarkedMaker    *bool    `json:"marked_maker"`
	MarkedYear     *bool    `json:"marked_year"`
	MarkedTested   *bool    `json:"marked_test_date"`
	MarkedTemps    *bool    `json:"marked_temperatures"`
	MarkedBurst    *bool    `json:"marked_burst_or_test"`
	Listed         *bool    `json:"listed"`
	Readable       *bool    `json:"readable"`
	EditionMatters bool     `json:"edition_matters"`
	EditionStated  bool     `json:"edition_stated"`
	TestedDays     *int64   `json:"days_since_test"`
	TestKind       string   `json:"test_kind"`
	LowSide        bool     `json:"low_side"`
	LowReliefKPa   *int64   `json:"low_side_relief_kpa"`
	IntervalDays   *int64   `json:"test_interval_days"`
	AgeDays        *int64   `json:"age_days"`
	LifeStated     bool     `json:"life_stated"`
	LifeDays       *int64   `json:"life_days"`
	InspectedDays  *int64   `json:"days_since_inspection"`
	Defects        []string `json:"defects"`
	ConditionKnown *bool    `json:"condition_stated"`
	Grade          string   `json:"electrical_grade"`
	ResistanceOhm  *int64   `json:"resistance_ohm"`
	ResistanceDays *int64   `json:"days_since_resistance_test"`
	Retention      string   `json:"end_retention"`
	BandBarred     bool     `json:"band_barred"`
	BandBarredBy   string   `json:"band_barred_by"`
	BendMM         *int64   `json:"bend_mm"`
	LeastBendMM    *int64   `json:"least_bend_mm"`
	VacuumLikely   bool     `json:"vacuum_likely"`
	VacuumCause    string   `json:"vacuum_cause"`
	VacuumNeedKPa  *int64   `json:"vacuum_need_kpa"`
	VacuumHaveKPa  *int64   `json:"vacuum_have_kpa"`
	AlloyOnPaper   bool     `json:"alloy_on_paper_only"`
}

// Service mirrors the facts of that name.
type Service struct {
	ID         string   `json:"id"`
	Hose       string   `json:"hose"`
	Fluid      string   `json:"fluid"`
	FluidID    string   `json:"fluid_id"`
	Ammonia    bool     `json:"ammonia"`
	Words      []string `json:"words"`
	ForStated  bool     `json:"only_for_stated"`
	OnlyFor    []string `json:"only_for"`
	NotFor     []string `json:"not_for"`
	Named      *bool    `json:"maker_names_it"`
	ClassKnown *bool    `json:"class_known"`
}

// Part mirrors the facts of that name.
type Part struct {
	ID          string `json:"id"`
	Run         string `json:"run"`
	Kind        string `json:"kind"`
	Conductor   *bool  `json:"conductor"`
	Bonded      *bool  `json:"bonded"`
	Flammable   bool   `json:"carries_flammable"`
	Oxygen      bool   `json:"carries_oxygen"`
	AtOpenPoint bool   `json:"at_open_point"`
	OxygenClean *bool  `json:"oxygen_clean"`
	Separation  bool   `json:"acts_on_separation_only"`
	TestDated   bool   `json:"test_dated"`
	TestedDays  *int64 `json:"days_since_test"`
	Interval    *int64 `json:"test_interval_days"`
}

// Regulator mirrors the facts of that name.
type Regulator struct {
	ID            string `json:"id"`
	SourceKPa     *int64 `json:"source_kpa"`
	InletRatedKPa *int64 `json:"inlet_rated_kpa"`
	SetKPa        *int64 `json:"set_kpa"`
	LockUpStated  bool   `json:"lock_up_stated"`
	ReliefCounted bool   `json:"relief_counted"`
}

// Limit mirrors the facts of that name.
type Limit struct {
	ID        string `json:"id"`
	Part      string `json:"part"`
	What      string `json:"what"`
	HighestCK *int64 `json:"highest_ck"`
	LowestCK  *int64 `json:"lowest_ck"`
	HottestCK *int64 `json:"hottest_ck"`
	VentedCK  *int64 `json:"vented_ck"`
	ColdestCK *int64 `json:"coldest_ck"`
	Seal      bool   `json:"is_seal"`
}

// Joint mirrors the facts of that name.
type Joint struct {
	ID        string   `json:"id"`
	A         string   `json:"a"`
	B         string   `json:"b"`
	FamilyA   string   `json:"family_a"`
	FamilyB   string   `json:"family_b"`
	Mate      string   `json:"mate"`
	LookAlike bool     `json:"look_alike"`
	Why       string   `json:"why"`
	Size      string   `json:"size"`
	Gender    string   `json:"gender"`
	Hand      string   `json:"hand"`
	Class     string   `json:"class"`
	Facing    string   `json:"facing"`
	Number    string   `json:"outlet_number"`
	Cylinder  bool     `json:"cylinder_outlet"`
	GasListed *bool    `json:"gas_listed"`
	Excluded  []string `json:"excluded_services"`
	NeedsLock bool     `json:"needs_locking"`
	Locked    *bool    `json:"locked"`
	NeedsSeal *bool    `json:"needs_seal"`
	SealsSaid bool     `json:"seals_stated"`
	SealCount *int64   `json:"seal_count"`
	Open      bool     `json:"open_point"`
	BoltsWant bool     `json:"bolts_in_question"`
	ClassBolt bool     `json:"class_flange"`
	AtHose    bool     `json:"at_hose"`
	Bolts     *int64   `json:"bolts"`
	Holes     *int64   `json:"bolt_holes"`
}

// Seal mirrors the facts of that name.
type Seal struct {
	ID       string `json:"id"`
	Joint    string `json:"joint"`
	Kind     string `json:"kind"`
	KindFits *bool  `json:"kind_fits"`
	Size     string `json:"size"`
	Material string `json:"material"`
	Both     bool   `json:"pressure_times_temperature_stated"`
	MostBoth *int64 `json:"pressure_times_temperature_limit_kpac"`
	HaveBoth *int64 `json:"pressure_times_temperature_kpac"`
	PShare   *int64 `json:"pressure_share_permille"`
	TShare   *int64 `json:"temperature_share_permille"`
}
