package catalog

// Hose is one file of hoses/: one class of one standard, at a stated edition.
type Hose struct {
	ID          string      `yaml:"id"`   // standard and class, e.g. en-12115-sd
	Name        string      `yaml:"name"` // own words
	Also        []string    `yaml:"also,omitempty"`
	Standard    string      `yaml:"standard"`          // printed form, e.g. EN 12115
	Class       string      `yaml:"class,omitempty"`   // type or class letter as marked on the hose
	Edition     *Text       `yaml:"edition,omitempty"` // edition the figures are for
	Earlier     []Earlier   `yaml:"earlier_editions,omitempty"`
	Rating      *Rating     `yaml:"rating,omitempty"`
	Temperature *Span       `yaml:"temperature,omitempty"`
	Derating    *Derating   `yaml:"derating,omitempty"` // absent: full rating inside the temperature span, none outside
	ProofRatio  *Number     `yaml:"proof_ratio,omitempty"`
	BurstRatio  *Number     `yaml:"burst_ratio,omitempty"`
	BurstBar    *Number     `yaml:"burst_bar,omitempty"`
	Bore        *BySize     `yaml:"bore_mm,omitempty"`    // where the size does not tell the bore, as for tube dashes
	Vacuum      *BySize     `yaml:"vacuum_bar,omitempty"` // bar gauge, negative
	Bend        *BySize     `yaml:"bend_mm,omitempty"`    // smallest bend radius
	BendTo      string      `yaml:"bend_measured_to,omitempty"`
	Electrical  *List       `yaml:"electrical_grades,omitempty"` // M, Ohm, M/T, Ohm/T, discontinuous, none
	Layers      []Layer     `yaml:"layers,omitempty"`
	For         *List       `yaml:"only_for,omitempty"` // service words, see Service
	NotFor      []Exclusion `yaml:"not_for,omitempty"`
	LengthPct   *BySize     `yaml:"length_change_pct,omitempty"`
	TestMonths  *Number     `yaml:"test_interval_months,omitempty"`
	LifeYears   *Number     `yaml:"service_life_years,omitempty"`
	ShelfYears  *Number     `yaml:"shelf_life_years,omitempty"`
	Marks       *List       `yaml:"marks,omitempty"` // what the standard wants readable on the hose
	Cautions    []Reason    `yaml:"cautions,omitempty"`
}

// Earlier is an earlier edition whose figures differ; where the edition of a hose is unknown the lower figure counts.
type Earlier struct {
	Edition string  `yaml:"edition"`
	Rating  *Rating `yaml:"rating,omitempty"`
	Origin  `yaml:",inline"`
}

// Rating is the highest working pressure, bar gauge, peaks included: one figure for all sizes, or one by size.
// MakerStates means that the standard leaves the figure to the maker: the hose's own marking is needed.
type Rating struct {
	Bar         float64    `yaml:"bar,omitempty"`
	Sizes       []SizedBar `yaml:"by_size,omitempty"`
	MakerStates bool       `yaml:"maker_states,omitempty"`
	Origin      `yaml:",inline"`
}

// SizedBar is one row of a table by size; sizes are written as the standard writes them, e.g. "DN 25" or "-16".
type SizedBar struct {
	Size  string  `yaml:"size"`
	Bar   float64 `yaml:"bar"`
	Burst float64 `yaml:"burst_bar,omitempty"`
}

// BySize is one figure for all sizes or a table by size.
type BySize struct {
	All    *float64     `yaml:"all,omitempty"`
	Sizes  []SizedValue `yaml:"by_size,omitempty"`
	Origin `yaml:",inline"`
}

// SizedValue is one row of a BySize table.
type SizedValue struct {
	Size  string  `yaml:"size"`
	Value float64 `yaml:"value"`
}

// Span is a temperature range in degrees Celsius; nothing is claimed outside it.
type Span struct {
	LowestC  *float64 `yaml:"lowest_c,omitempty"`
	HighestC *float64 `yaml:"highest_c,omitempty"`
	Origin   `yaml:",inline"`
}

// Derating is a table of factors on the rating. Steps tables are read at the next hotter row; others are interpolated.
type Derating struct {
	Points     []Point            `yaml:"points,omitempty,flow"`
	ByMaterial map[string][]Point `yaml:"by_material,omitempty"` // lowest factor of liner and braid material counts
	Steps      bool               `yaml:"steps,omitempty"`
	ColdC      *float64           `yaml:"flat_down_to_c,omitempty"` // factor 1 from here up to the first point
	Origin     `yaml:",inline"`
}

// Layer is one layer of the hose and what it may be made of. One material is a statement; several are a choice the sheet must make.
type Layer struct {
	Role      string   `yaml:"role"` // liner, reinforcement, cover
	Materials []string `yaml:"materials,flow"`
	Origin    `yaml:",inline"`
}

// Exclusion is a service the standard or the law keeps this class out of.
type Exclusion struct {
	Service string `yaml:"service"` // a service word: liquefied-gas, steam, flammable, lpg, ammonia, oxygen, acetylene, chemicals, gas, cryogenic, drinking-water, food, fuel, or fluid:<id>
	Why     string `yaml:"why,omitempty"`
	Origin  `yaml:",inline"`
}
