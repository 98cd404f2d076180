package catalog

// Material is one file of materials/. Ids are ISO 1629 / ASTM D1418 letters, ISO 1043-1 letters, UNS numbers or a plain word.
type Material struct {
	ID          string   `yaml:"id"`
	Name        string   `yaml:"name"`
	Also        []string `yaml:"also,omitempty"`
	Family      string   `yaml:"family"` // elastomer, plastic, metal, gasket, reinforcement
	LowestC     *Number  `yaml:"lowest_c,omitempty"`
	HighestC    *Number  `yaml:"highest_c,omitempty"`
	Intermit    *Number  `yaml:"intermittent_highest_c,omitempty"`
	Storage     *Text    `yaml:"storage_group,omitempty"` // ISO 2230 group A, B or C
	Contains    []string `yaml:"contains,omitempty,flow"` // constituents a legal bar can name: aluminium, copper, zinc, magnesium, silver, mercury, lead, nickel, titanium, iron
	CopperPct   *Number  `yaml:"copper_pct_highest,omitempty"`
	FlangeGroup *Text    `yaml:"flange_group,omitempty"` // ASME B16.5 material group
	Strong      string   `yaml:"strong_against,omitempty"`
	Weak        string   `yaml:"weak_against,omitempty"`
	Hansen      *Sphere  `yaml:"hansen,omitempty"`
	Conductive  *Flag    `yaml:"conductive,omitempty"`
	Remark      string   `yaml:"remark,omitempty"`
	JudgedAs    string   `yaml:"judged_as,omitempty"` // material whose rows count where a fluid has none for this one, e.g. a braid and its alloy
	Permeable   *Flag    `yaml:"permeable,omitempty"` // lets small molecules through to the layer behind
}

// Sphere is a Hansen interaction sphere, MPa^0.5.
type Sphere struct {
	D, P, H, R float64
	Origin     `yaml:",inline"`
}
