package catalog

// Connection is one file of connections/: a family of ends that share a standard.
type Connection struct {
	ID          string         `yaml:"id"` // e.g. flange-asme-b16-5, thread-npt, cylinder-cga-v1
	Name        string         `yaml:"name"`
	Also        []string       `yaml:"also,omitempty"`
	Standard    string         `yaml:"standard"`
	Kind        string         `yaml:"kind"`     // flange, thread, tube-end, port, coupling, cylinder-outlet, hygienic, hose-tail
	SizedBy     string         `yaml:"sized_by"` // nps, dn, inch, dash, tube-od, metric, number
	Gendered    bool           `yaml:"gendered"` // male with female; otherwise two equal halves join
	Hand        string         `yaml:"hand,omitempty"`
	ClassedBy   string         `yaml:"classed_by,omitempty"` // class, pn, series: the end must state it when set
	Sizes       []string       `yaml:"sizes,omitempty,flow"` // allowed sizes when the standard limits them
	Temperature *Span          `yaml:"temperature,omitempty"`
	Ratings     []EndRating    `yaml:"ratings,omitempty"`
	Excludes    []Exclusion    `yaml:"excludes,omitempty"`
	Seals       SealNeed       `yaml:"seal"`
	Locking     *Flag          `yaml:"needs_locking,omitempty"`
	Mates       []Mate         `yaml:"mates"`
	Drilling    []Drill        `yaml:"drilling,omitempty"`
	Threads     []Thread       `yaml:"threads,omitempty"`
	Outlets     []OutletNumber `yaml:"outlets,omitempty"`
	Cautions    []Reason       `yaml:"cautions,omitempty"`
}

// EndRating is one pressure-temperature statement of the family. Empty selectors match all; the lowest matching row counts.
type EndRating struct {
	Class    string   `yaml:"class,omitempty"`          // e.g. "150", "PN 16", "L"
	Group    string   `yaml:"group,omitempty"`          // material group, e.g. "2.2"
	Material []string `yaml:"materials,omitempty,flow"` // material ids it is for
	NotFor   []string `yaml:"not_materials,omitempty,flow"`
	Sizes    []string `yaml:"sizes,omitempty,flow"`
	Points   []Point  `yaml:"points,flow"` // bar gauge against degrees Celsius, linear between; one point means flat over Temperature
	Origin   `yaml:",inline"`
}

// SealNeed says what makes the joint tight and so must be declared on the sheet.
type SealNeed struct {
	Required bool     `yaml:"required"`
	Kinds    []string `yaml:"kinds,omitempty,flow"` // ids of seals/ that fit; empty with required false means metal to metal
	Origin   `yaml:",inline"`
}

// Mate is one row of the mating table, written in the file of either family. A pair found in neither file is not a known pair.
type Mate struct {
	With    string `yaml:"with"`
	Verdict string `yaml:"verdict"` // fits (designed pair), stop (joins or nearly so, must not be used), no-fit (does not join)
	Why     string `yaml:"why"`
	Origin  `yaml:",inline"`
}

// Drill is the drilling of one flange.
type Drill struct {
	Size     string  `yaml:"size"`
	Class    string  `yaml:"class"`
	CircleMM float64 `yaml:"circle_mm"`
	Holes    int     `yaml:"holes"`
	HoleMM   float64 `yaml:"hole_mm"`
	Bolt     string  `yaml:"bolt"`
	Origin   `yaml:",inline"`
}

// Thread is the thread of one size.
type Thread struct {
	Size     string  `yaml:"size"`
	Class    string  `yaml:"class,omitempty"`
	Thread   string  `yaml:"thread"`
	MajorMM  float64 `yaml:"major_mm,omitempty"`
	PitchMM  float64 `yaml:"pitch_mm,omitempty"`
	AngleDeg float64 `yaml:"angle_deg,omitempty"`
	Hand     string  `yaml:"hand,omitempty"`
	Origin   `yaml:",inline"`
}

// OutletNumber is one cylinder outlet number: its gases, highest pressure and thread.
type OutletNumber struct {
	Number  string   `yaml:"number"`
	Fluids  []string `yaml:"fluids,flow"` // fluid ids the number is assigned to
	MaxBar  *float64 `yaml:"highest_bar,omitempty"`
	Hand    string   `yaml:"hand,omitempty"`
	Thread  string   `yaml:"thread,omitempty"`
	Gender  string   `yaml:"valve_thread,omitempty"` // external or internal
	Washer  *bool    `yaml:"washer,omitempty"`
	Hazard  string   `yaml:"group,omitempty"`
	Remarks string   `yaml:"remark,omitempty"`
	Origin  `yaml:",inline"`
}

// Seal is one file of seals/: a kind of joint seal and its limits.
type Seal struct {
	ID          string   `yaml:"id"`
	Name        string   `yaml:"name"`
	Also        []string `yaml:"also,omitempty"`
	Kind        string   `yaml:"kind"` // gasket, o-ring, washer, ring-joint, sealant, bonded-seal
	LowestC     *Number  `yaml:"lowest_c,omitempty"`
	HighestC    *Number  `yaml:"highest_c,omitempty"`
	HighestBar  *Number  `yaml:"highest_bar,omitempty"`
	PressTimesT *Number  `yaml:"bar_times_c_highest,omitempty"` // the two limits never apply together
	SingleUse   *Flag    `yaml:"single_use,omitempty"`
	Materials   []string `yaml:"materials,omitempty,flow"` // what the seal may be made of; empty: the sheet says
	Cautions    []Reason `yaml:"cautions,omitempty"`
}

// Source is one file of sources/: a document the catalog or a rule rests on.
type Source struct {
	ID       string `yaml:"id"`
	Document string `yaml:"document"`
	Edition  string `yaml:"edition,omitempty"`
	Via      string `yaml:"via,omitempty"` // law, abstract, excerpt, report, restated, dataset, memory
	Remark   string `yaml:"remark,omitempty"`
	Check    string `yaml:"check,omitempty"` // what to look up before relying on it
}
