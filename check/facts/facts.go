package facts

// Schema names the shape of this document. It changes when a fact is renamed or changes meaning.
const Schema = "lineworthy/facts/1"

// Facts is everything the rules may know about one line: SI integers, words and booleans, grouped by kind.
// A fact that is not known is left out, never zero; what it is and who can supply it stands in Unknowns.
//
// Units are in the names: _kpa gauge kilopascal, _ck centikelvin, _mm millimetre, _days days, _day days since
// 1970-01-01, _permille per mille, _ohm ohm, _mmps mm/s, _mm2ps mm2/s, _ms milliseconds, _n newton, _minutes minutes, _um micrometre,
// _mlps millilitres a second, _kpac kilopascal times °C. Capacities round down, demands round up.
type Facts struct {
	Schema     string      `json:"schema"`
	Line       Line        `json:"line"`
	Fluids     []Fluid     `json:"fluids"`
	Hoses      []Hose      `json:"hoses"`
	Services   []Service   `json:"services"`
	Parts      []Part      `json:"parts"`
	Regulators []Regulator `json:"regulators"`
	Capacities []Capacity  `json:"capacities"`
	Limits     []Limit     `json:"limits"`
	Joints     []Joint     `json:"joints"`
	Seals      []Seal      `json:"seals"`
	Pairs      Pairs       `json:"pairs"`
	Bars       []Bar       `json:"bars"`
	Meetings   []Meeting   `json:"meetings"`
	Points     []Point     `json:"points"`
	Cases      []Case      `json:"cases"`
	Sections   []Section   `json:"sections"`
	Surges     []Surge     `json:"surges"`
	Reliefs    []Relief    `json:"reliefs"`
	Vessels    []Vessel    `json:"vessels"`
	Gauges     []Gauge     `json:"gauges"`
	Flows      []Flow      `json:"flows"`
	Releases   []Release   `json:"releases"`
	Tests      []Test      `json:"tests"`
	TestItems  []TestItem  `json:"test_items"`
	Steams     []Steam     `json:"steams"`
	Labels     []Label     `json:"labels"`
	Closures   []Closure   `json:"closures"`
	Tails      []Tail      `json:"tails"`
	ExcessFlow []Excess    `json:"excess_flows"`
	Values     []Value     `json:"values"`
	Unknowns   []Unknown   `json:"unknowns"`
}

// Line is what concerns the line as a whole.
type Line struct {
	ID              string   `json:"id"`
	AsOfDay         int64    `json:"as_of_day"`
	Regimes         []string `json:"regimes"`               // as printed, e.g. "29 CFR 1910.111", sorted
	Unruled         []string `json:"regimes_without_rules"` // those that no rule and no legal bar is written for
	Flammable       bool     `json:"carries_flammable"`
	Toxic           bool     `json:"carries_toxic"`
	Corrosive       bool     `json:"carries_corrosive"`
	LiquefiedGas    bool     `json:"carries_liquefied_gas"`
	HazardInReach   bool     `json:"hazard_in_reach"` // a receiving point in reach holds what reacts dangerously with a carried fluid
	Pressurised     bool     `json:"pressurised"`     // any part sees more than atmospheric pressure
	RemoteStop      Bool     `json:"remote_stop,omitzero" ask:"safeguards.remote_stop: can the flow be stopped from outside the hazard zone"`
	AutomaticStop   Bool     `json:"automatic_stop,omitzero" ask:"safeguards.automatic_stop: does anything stop the flow without a person"`
	StopDays        Int      `json:"days_since_stop_test,omitzero" ask:"safeguards.stop_tested: the day the stop was last worked"`
	Attended        Bool     `json:"attended,omitzero" ask:"safeguards.attended: does someone stay with the transfer"`
	PassiveShutoff  bool     `json:"passive_shutoff"` // a device that acts on separation only is in the line
	Changed         bool     `json:"changed"`         // the sheet records a change
	ChangeInKind    Bool     `json:"change_in_kind,omitzero" ask:"change.in_kind: is it a replacement in kind"`
	ChangeRecord    bool     `json:"change_record"` // the change names its record
	ChangeReviewed  Int      `json:"change_authorised_day,omitzero"`
	ChangeTemporary bool     `json:"change_temporary"`
	ChangeUntil     Int      `json:"change_until_day,omitzero" ask:"change.until: last day of the temporary change"`
	ChangeNotInKind bool     `json:"change_not_in_kind"` // changed, and not said to be a replacement in kind
	ChangeBasis     Bool     `json:"change_states_basis,omitzero" ask:"change.basis: does the change record state the technical basis"`
	ChangeEffects   Bool     `json:"change_states_effects,omitzero" ask:"change.effects: does the change record state the effects on safety and health"`
	ChangeProcedure Bool     `json:"change_states_procedures,omitzero" ask:"change.procedures: does the change record state the changes to procedures"`
	ChangeTrained   Bool     `json:"change_trained,omitzero" ask:"change.trained: were those who work the line told and trained"`
}

// Fluid is one fluid under the name the sheet gives it. A hazard that is not known counts as present.
type Fluid struct {
	ID           string `json:"id"`
	Fluid        string `json:"fluid"` // catalog id
	Name         string `json:"name"`
	Role         string `json:"role" words:"product,pad,flush,previous,test,steam,contents"`
	Form         string `json:"form" words:"liquid,liquefied-gas,compressed-gas,cryogenic-liquid,dissolved-gas,vapour"`
	Air          bool   `json:"air"`
	Flammable    bool   `json:"flammable"`
	Toxic        bool   `json:"toxic"`
	Corrosive    bool   `json:"corrosive"`
	Oxidiser     bool   `json:"oxidiser"`
	Dry          Bool   `json:"dry,omitzero" ask:"fluids.*.dryness: is the gas dry"`
	OilFree      Bool   `json:"oil_free,omitzero" ask:"fluids.*.oil_free: is the gas free of oil"`
	HighestCK    Int    `json:"highest_ck,omitzero" ask:"fluids.*.temperature.highest, or site.highest"`
	LowestCK     Int    `json:"lowest_ck,omitzero" ask:"fluids.*.temperature.lowest, or site.lowest"`
	Accumulator  Bool   `json:"accumulator,omitzero" ask:"the conductivity of the liquid (below 50 pS/m it accumulates charge)"`
	DutyKPa      Int    `json:"duty_kpa,omitzero" ask:"the pressure at duty of every run that carries it"` // highest duty pressure of any run that carries it
	Strength     Int    `json:"concentration_permille,omitzero" ask:"fluids.*.concentration"`
	StrengthFits Bool   `json:"concentration_fits,omitzero" ask:"fluids.*.concentration: the catalog entry speaks for a range"`
}

// Hose is one hose assembly.
type Hose struct {
	ID             string   `json:"id"`
	Run            string   `json:"run"`
	Class          string   `json:"class,omitzero" ask:"parts.*.class: hose class by standard, or the maker's paper"`
	Medium         string   `json:"medium" words:"water,liquid,gas,liquefied-gas,steam"` // the hardest the hose carries, for the burst ratio
	Flammable      bool     `json:"carries_flammable"`
	Ammonia        bool     `json:"carries_ammonia"`
	LPG            bool     `json:"carries_lpg"`
	LiquefiedGas   bool     `json:"carries_liquefied_gas"`
	Gas            bool     `json:"carries_gas"`
	Toxic          bool     `json:"carries_toxic"`
	Oxygen         bool     `json:"carries_oxygen"`
	Accumulator    Bool     `json:"carries_accumulator,omitzero" ask:"the conductivity of the liquids carried"`
	RatedKPa       Int      `json:"rated_kpa,omitzero" ask:"the working pressure marked on the hose, with its certificate"`
	BurstKPa       Int      `json:"burst_kpa,omitzero" ask:"the burst pressure from the hose's certificate or its standard"`
	RatioPermille  Int      `json:"burst_ratio_permille,omitzero" ask:"burst and working pressure of the hose"` // burst over working pressure, rounded down
	ClassRatio     Int      `json:"class_ratio_permille,omitzero"`                                              // what the hose's own standard wants
	TestedAtKPa    Int      `json:"test_pressure_kpa,omitzero" ask:"parts.*.test_pressure: pressure of the last test"`
	AssignedStated bool     `json:"assigned_stated"`
	TagMatches     Bool     `json:"tag_matches,omitzero" ask:"parts.*.tag: the identity read on the hose"`
	MarksStated    bool     `json:"marks_stated"`
	MarkedAmmonia  Bool     `json:"marked_ammonia,omitzero" ask:"parts.*.marks: what is printed on the hose"`
	MarkedLPG      Bool     `json:"marked_lpg,omitzero" ask:"parts.*.marks: what is printed on the hose"`
	MarkedPressure Bool     `json:"marked_pressure,omitzero" ask:"parts.*.marks: what is printed on the hose"`
	MarkedMaker    Bool     `json:"marked_maker,omitzero" ask:"parts.*.marks: what is printed on the hose"`
	MarkedYear     Bool     `json:"marked_year,omitzero" ask:"parts.*.marks: what is printed on the hose"`
	Listed         Bool     `json:"listed,omitzero" ask:"parts.*.listed: the laboratory that lists the hose, from its mark or paper"`
	MarkedTested   Bool     `json:"marked_test_date,omitzero" ask:"parts.*.marks: what is printed on the hose"`
	MarkedTemps    Bool     `json:"marked_temperatures,omitzero" ask:"parts.*.marks: what is printed on the hose"` // two of them
	MarkedBurst    Bool     `json:"marked_burst_or_test,omitzero" ask:"parts.*.marks: what is printed on the hose"`
	Readable       Bool     `json:"readable,omitzero" ask:"parts.*.readable: can the marks be read"`
	EditionMatters bool     `json:"edition_matters"` // editions of the class differ in rating
	EditionStated  bool     `json:"edition_stated"`
	TestedDays     Int      `json:"days_since_test,omitzero" ask:"parts.*.tested: date of the last pressure test"`
	TestKind       string   `json:"test_kind,omitzero" words:"hydrostatic,pneumatic,leak,visual" ask:"parts.*.test_kind: what was done on the day of tested"`
	LowSide        bool     `json:"low_side"` // stands behind a regulator of its run
	LowReliefKPa   Int      `json:"low_side_relief_kpa,omitzero" ask:"set of the relief device that protects what lies behind the regulator"`
	IntervalDays   Int      `json:"test_interval_days,omitzero" ask:"parts.*.test_interval: the shorter of maker's and site's interval"`
	AgeDays        Int      `json:"age_days,omitzero" ask:"parts.*.made: when the hose was made"`
	LifeStated     bool     `json:"life_stated"`
	LifeDays       Int      `json:"life_days,omitzero" ask:"parts.*.life: service life by the maker or the site"`
	InspectedDays  Int      `json:"days_since_inspection,omitzero" ask:"parts.*.inspected: date of the last visual inspection"`
	Defects        []string `json:"defects" words:"kinked,crushed,cover-damaged,reinforcement-exposed,blistered,soft-spot,leaking,coupling-damaged,coupling-slipped,braid-damaged"`
	ConditionKnown Bool     `json:"condition_stated,omitzero" ask:"parts.*.condition: what the visual inspection found"`
	Grade          string   `json:"electrical_grade,omitzero" words:"M,Ohm,M/T,Ohm/T,discontinuous,none" ask:"parts.*.electrical: electrical grade of the assembly"`
	ResistanceOhm  Int      `json:"resistance_ohm,omitzero" ask:"parts.*.resistance: measured end to end"`
	ResistanceDays Int      `json:"days_since_resistance_test,omitzero" ask:"parts.*.resistance_tested: date of the measurement"`
	Retention      string   `json:"end_retention,omitzero" words:"swaged,crimped,screwed-ferrule,clamp-shells,interlocking-clamp,screw-together,band,worm-drive,none" ask:"parts.*.retention: what holds the ends on the hose"`
	BandBarred     bool     `json:"band_barred"`    // it carries something that no band may hold
	BandBarredBy   string   `json:"band_barred_by"` // what that is; empty for none
	BendMM         Int      `json:"bend_mm,omitzero" ask:"parts.*.bend: smallest installed bend radius"`
	LeastBendMM    Int      `json:"least_bend_mm,omitzero" ask:"the hose's smallest permitted bend radius"`
	VacuumLikely   bool     `json:"vacuum_likely"` // something can pull less than the air's pressure in it
	VacuumCause    string   `json:"vacuum_cause"`
	VacuumNeedKPa  Int      `json:"vacuum_need_kpa,omitzero" ask:"how far below the air the hose can be pulled"` // below the air, as a positive figure
	VacuumHaveKPa  Int      `json:"vacuum_have_kpa,omitzero" ask:"vacuum of the hose, from its class or its maker"`
	AlloyOnPaper   bool     `json:"alloy_on_paper_only"` // reinforcement alloy matters and nothing says how it was verified
}

// Service is one fluid in one hose: the words for the service, and those the class is and is not meant for.
type Service struct {
	ID         string   `json:"id"`
	Hose       string   `json:"hose"`
	Fluid      string   `json:"fluid"`
	FluidID    string   `json:"fluid_id"` // catalog id
	Ammonia    bool     `json:"ammonia"`
	Words      []string `json:"words"`
	ForStated  bool     `json:"only_for_stated"`
	OnlyFor    []string `json:"only_for"`
	NotFor     []string `json:"not_for"`
	Named      Bool     `json:"maker_names_it,omitzero" ask:"parts.*.specified_for: fluids the hose maker names for this hose"`
	ClassKnown Bool     `json:"class_known,omitzero" ask:"parts.*.class: hose class by standard"`
}

// Part is one part, hoses included.
type Part struct {
	ID          string `json:"id"`
	Run         string `json:"run"`
	Kind        string `json:"kind"`
	Conductor   Bool   `json:"conductor,omitzero" ask:"parts.*.material: is the part metal"`
	Bonded      Bool   `json:"bonded,omitzero" ask:"parts.*.bonded: is the part bonded to earth"`
	Flammable   bool   `json:"carries_flammable"`
	Oxygen      bool   `json:"carries_oxygen"`
	AtOpenPoint bool   `json:"at_open_point"` // the run ends at an open hatch, funnel or top
	OxygenClean Bool   `json:"oxygen_clean,omitzero" ask:"parts.*.oxygen_clean: cleaned for oxygen, with a record"`
	Separation  bool   `json:"acts_on_separation_only"`
	TestDated   bool   `json:"test_dated"` // neither hose nor relief device, with the day and the interval of its test
	TestedDays  Int    `json:"days_since_test,omitzero" ask:"parts.*.tested: date of the last test"`
	Interval    Int    `json:"test_interval_days,omitzero" ask:"parts.*.test_interval: the shorter of maker's and site's interval"`
}

// Regulator is one pressure regulator.
type Regulator struct {
	ID            string `json:"id"`
	SourceKPa     Int    `json:"source_kpa,omitzero" ask:"the highest pressure upstream of the regulator"`
	InletRatedKPa Int    `json:"inlet_rated_kpa,omitzero" ask:"parts.*.inlet_rated: rated inlet pressure of the regulator"`
	SetKPa        Int    `json:"set_kpa,omitzero" ask:"parts.*.set: set pressure of the regulator"`
	LockUpStated  bool   `json:"lock_up_stated"`
	ReliefCounted bool   `json:"relief_counted"` // a relief device limits its failure
}

// Capacity is one thing that must hold pressure, at the case that leaves it the least.
type Capacity struct {
	ID          string `json:"id"`
	Part        string `json:"part"`
	What        string `json:"what"` // hose, end, seal, vessel, body, gauge, outlet class
	Case        string `json:"case"` // governing case
	RatedKPa    Int    `json:"rated_kpa,omitzero" ask:"the working pressure at that temperature, stamped or certified"`
	DemandKPa   Int    `json:"demand_kpa,omitzero" ask:"the highest pressure the source can give"`
	TempCK      Int    `json:"temperature_ck,omitzero"`
	Hose        bool   `json:"is_hose"`
	Accumulates bool   `json:"accumulates"` // a vessel whose code lets the pressure rise over its rating while its relief device blows
}

// Limit is one temperature range that a part, seal or material must stay inside.
type Limit struct {
	ID        string `json:"id"`
	Part      string `json:"part"`
	What      string `json:"what"` // hose class, end, seal kind, material, stated
	HighestCK Int    `json:"highest_ck,omitzero" ask:"highest permitted temperature"`
	LowestCK  Int    `json:"lowest_ck,omitzero" ask:"lowest permitted temperature"`
	HottestCK Int    `json:"hottest_ck,omitzero" ask:"fluids.*.temperature.highest, or site.highest"`
	VentedCK  Int    `json:"vented_ck,omitzero"` // coldest that a liquefied gas makes it when let off to the air
	ColdestCK Int    `json:"coldest_ck,omitzero" ask:"fluids.*.temperature.lowest, or site.lowest"`
	Seal      bool   `json:"is_seal"`
}

// Joint is two ends that face each other.
type Joint struct {
	ID        string   `json:"id"`
	A         string   `json:"a"`
	B         string   `json:"b"`
	FamilyA   string   `json:"family_a,omitzero" ask:"connection standard of the first end"`
	FamilyB   string   `json:"family_b,omitzero" ask:"connection standard of the second end"`
	Mate      string   `json:"mate,omitzero" words:"fits,stop,no-fit" ask:"whether these two connection standards are a designed pair"`
	LookAlike bool     `json:"look_alike"` // the two can be joined, or nearly, and must not be
	Why       string   `json:"why"`
	Size      string   `json:"size,omitzero" words:"same,differs" ask:"size of both ends"`
	Gender    string   `json:"gender,omitzero" words:"opposite,same,none" ask:"gender of both ends"`
	Hand      string   `json:"hand,omitzero" words:"same,differs" ask:"hand of both threads"`
	Class     string   `json:"class,omitzero" words:"same,drilling-same,differs,none" ask:"class, PN or series of both ends"`
	Facing    string   `json:"facing,omitzero" words:"same,differs,none" ask:"facing of both ends"`
	Number    string   `json:"outlet_number,omitzero" words:"same,differs,none" ask:"cylinder outlet number of both ends"`
	Cylinder  bool     `json:"cylinder_outlet"`
	GasListed Bool     `json:"gas_listed,omitzero" ask:"whether the outlet number is assigned to the gas"`
	Excluded  []string `json:"excluded_services"` // services carried that the standard of an end keeps out
	NeedsLock bool     `json:"needs_locking"`
	Locked    Bool     `json:"locked,omitzero" ask:"inlet.locked: are the levers pinned or the ring turned"`
	NeedsSeal Bool     `json:"needs_seal,omitzero" ask:"connection standard of both ends"`
	SealsSaid bool     `json:"seals_stated"`
	SealCount Int      `json:"seal_count,omitzero" ask:"inlet.seal: which seal is in the joint; write none if there is none"`
	Open      bool     `json:"open_point"`        // the far side is an open hatch, not a joint
	BoltsWant bool     `json:"bolts_in_question"` // flanges with a drilling, and the bolts are stated or the fluid is one that asks for the count
	ClassBolt bool     `json:"class_flange"`      // drilled to ASME B16.5
	AtHose    bool     `json:"at_hose"`           // one end belongs to a hose, so that the joint is made up for the transfer
	Bolts     Int      `json:"bolts,omitzero" ask:"inlet.bolts: how many bolts are fitted in the joint"`
	Holes     Int      `json:"bolt_holes,omitzero" ask:"class and size of both flanges, from which the number of bolt holes follows"`
}

// Seal is one seal of one joint.
type Seal struct {
	ID       string `json:"id"`
	Joint    string `json:"joint"`
	Kind     string `json:"kind,omitzero" ask:"inlet.seal.kind"`
	KindFits Bool   `json:"kind_fits,omitzero" ask:"which kinds of seal the connection standard takes"`
	Size     string `json:"size,omitzero" words:"same,differs,none" ask:"inlet.seal.size: size of the gasket"`
	Material string `json:"material,omitzero" ask:"inlet.seal.material"`
	Both     bool   `json:"pressure_times_temperature_stated"` // the catalog limits the product of the two for this kind
	MostBoth Int    `json:"pressure_times_temperature_limit_kpac,omitzero" ask:"the maker's limit for pressure times temperature"`
	HaveBoth Int    `json:"pressure_times_temperature_kpac,omitzero" ask:"the highest pressure and the highest temperature at the joint"`
	PShare   Int    `json:"pressure_share_permille,omitzero"`    // of what the kind holds
	TShare   Int    `json:"temperature_share_permille,omitzero"` // of the highest temperature of the kind, both in °C
}

// Pairs are materials against fluids, filed by rating so that a rule looks only where it must.
type Pairs struct {
	Unsuitable []Pair `json:"unsuitable"`
	Limited    []Pair `json:"limited"`
	Suitable   []Pair `json:"suitable"`
	Unlisted   []Pair `json:"unlisted"`
}

// Pair is one material of one layer against one fluid that reaches it.
type Pair struct {
	ID       string `json:"id"`
	Part     string `json:"part"`
	Layer    string `json:"layer" words:"liner,reinforcement,cover,body,wetted,seal,end,vessel"`
	Contact  string `json:"contact" words:"wetted,permeated"`
	Material string `json:"material"`
	Fluid    string `json:"fluid"`
	Rating   string `json:"rating,omitzero" words:"suitable,limited,unsuitable" ask:"evidence for this material in this fluid: maker's letter or a soak test"`
	Effect   string `json:"effect"`
	RowToCK  Int    `json:"row_to_ck,omitzero"` // highest temperature the row speaks for
	HotCK    Int    `json:"hottest_ck,omitzero" ask:"fluids.*.temperature.highest, or site.highest"`
	ByFamily bool   `json:"by_family"`
}

// Bar is a legal bar that meets a wetted material of this line.
type Bar struct {
	ID       string `json:"id"`
	Part     string `json:"part"`
	Material string `json:"material"`
	Fluid    string `json:"fluid"`
	Regime   string `json:"regime"`
	Applies  bool   `json:"regime_applies"` // the sheet names that regime
	Barred   bool   `json:"barred"`
	Why      string `json:"why"`
}

// Meeting is two fluids that can come together.
type Meeting struct {
	ID        string `json:"id"`
	A         string `json:"a"`
	B         string `json:"b"`
	Where     string `json:"where" words:"target,in-reach,pad,flush,previous,test"`
	Hazardous Bool   `json:"hazardous,omitzero" ask:"reaction groups of both fluids, or the safety data sheets"`
	Product   string `json:"product"` // what the two make, in words
	AirPad    bool   `json:"air_pad"` // air, or a gas with oxygen, over a flammable liquid
	Forbidden bool   `json:"forbidden_pad"`
	Why       string `json:"why"`
}

// Point is a receiving point: the one meant, or one the same hose can reach.
type Point struct {
	ID         string `json:"id"`
	Vessel     string `json:"vessel"`
	Target     bool   `json:"target"`
	Contents   string `json:"contents,omitzero" ask:"vessels.*.contains: what the vessel is for"`
	SameFluid  Bool   `json:"same_fluid,omitzero" ask:"vessels.*.contains: what the vessel is for"` // the vessel is for what the run carries
	Hazardous  Bool   `json:"hazardous,omitzero" ask:"reaction groups of both fluids, or the safety data sheets"`
	Product    string `json:"product"`
	Coupling   string `json:"coupling,omitzero" words:"same,different" ask:"points.*.standard, size and gender of the point"` // against the point meant
	Keyed      bool   `json:"keyed"`                                                                                          // a key or coupling of its own keeps other fluids out
	Padlocked  Bool   `json:"padlocked,omitzero" ask:"points.*.padlocked"`
	Marked     Bool   `json:"marked,omitzero" ask:"points.*.marked: what the label at the point says"`
	DistanceMM Int    `json:"distance_mm,omitzero" ask:"nearby.*.distance"`
	OpenPoint  bool   `json:"open_point"`
	Entry      string `json:"entry,omitzero" words:"dip-pipe,bottom,splash" ask:"points.*.entry: how the liquid enters"`
	Flammable  bool   `json:"receives_flammable"`
	Liquid     bool   `json:"receives_liquid"`
	Neighbours bool   `json:"neighbours_stated"`
}

// Case is one operating situation of one run.
type Case struct {
	ID     string `json:"id"`
	Run    string `json:"run"`
	Part   string `json:"from_part"` // first part it applies to
	Case   string `json:"case" words:"duty,lock-up,regulator-failed-open,vapour-pressure,pump-shut-in,heated-vessel,steam-out,pressure-test"`
	KPa    Int    `json:"pressure_kpa,omitzero"`
	TempCK Int    `json:"temperature_ck,omitzero"`
	Cause  string `json:"cause"`
}

// Value is a favourable value the line rests on, with how it is known.
type Value struct {
	ID       string   `json:"id"`
	What     string   `json:"what"`
	Standing string   `json:"standing" words:"site,published,restated,computed,stated,recalled,practice"`
	Source   string   `json:"source"` // document in words
	Clause   string   `json:"clause"`
	Used     []string `json:"used_by"` // parts that rest on it
}

// Unknown is a fact that is missing, why, and who can supply it.
type Unknown struct {
	Subject string `json:"subject"`
	Fact    string `json:"fact"` // collection.field
	Why     string `json:"why"`
	Ask     string `json:"ask"`
}
