package catalog

// Fluid is one file of fluids/: what the fluid is, how it behaves, whom it hurts and what it attacks.
type Fluid struct {
	ID           string     `yaml:"id"`
	Name         string     `yaml:"name"`
	Also         []string   `yaml:"also,omitempty"` // names people type; a name that fits several fluids is refused
	Formula      string     `yaml:"formula,omitempty"`
	Family       string     `yaml:"family,omitempty"`        // chemical family, e.g. ketone
	Services     []string   `yaml:"services,omitempty,flow"` // words a hose standard uses for it, e.g. lpg, fuel, food; see Hose.For
	Form         string     `yaml:"form"`                    // liquid, liquefied-gas, compressed-gas, cryogenic-liquid, dissolved-gas, vapour
	PropertiesOf string     `yaml:"properties_of,omitempty"` // id of the fluid whose constants and equations apply, e.g. chlorine for wet chlorine
	Strength     *Range     `yaml:"concentration,omitempty"` // mass per cent this file speaks for; absent means pure as supplied
	CAS          *Text      `yaml:"cas,omitempty"`
	UN           *Text      `yaml:"un,omitempty"`
	Constants    Constants  `yaml:"constants,omitempty"`
	VapourP      *Equation  `yaml:"vapour_pressure,omitempty"` // Pa, absolute, of K
	Density      *Equation  `yaml:"density,omitempty"`         // kg/m3 of the saturated liquid, of K
	Viscosity    *Equation  `yaml:"viscosity,omitempty"`       // Pa s of the liquid, of K
	Compress     *Equation  `yaml:"compressibility,omitempty"` // 1/Pa of the liquid, of K
	Hazards      Hazards    `yaml:"hazards,omitempty"`
	Electrical   Electrical `yaml:"electrical,omitempty"`
	Hansen       *Hansen    `yaml:"hansen,omitempty"`
	ForbidPads   []Reason   `yaml:"forbidden_pad_gases,omitempty"`
	Derived      []Reason   `yaml:"derived_species,omitempty"` // what hydrolysis or decomposition makes of it, e.g. hydrogen-chloride
	Outlets      []Outlet   `yaml:"cylinder_outlets,omitempty"`
	Bars         []Bar      `yaml:"bars,omitempty"`

	table *table // the compatibility block; see Rows and AllRows
}

// Range is a closed interval in per cent by mass, of the named constituent.
type Range struct {
	From   float64 `yaml:"from"`
	To     float64 `yaml:"to"`
	Of     string  `yaml:"of,omitempty"`
	Origin `yaml:",inline"`
}

// Constants are single numbers of the pure fluid.
type Constants struct {
	MolarMassGMol        *Number `yaml:"molar_mass_g_mol,omitempty"`
	CriticalTemperatureK *Number `yaml:"critical_temperature_k,omitempty"`
	CriticalPressurePa   *Number `yaml:"critical_pressure_pa,omitempty"`
	AcentricFactor       *Number `yaml:"acentric_factor,omitempty"`
	MeltingPointK        *Number `yaml:"melting_point_k,omitempty"`
	BoilingPointK        *Number `yaml:"boiling_point_k,omitempty"`
}

// Equation is a property equation. Names and coefficient order are documented in check/measure/property.go.
type Equation struct {
	Equation       string    `yaml:"equation"` // wagner-25, wagner-36, dippr-101, antoine, dippr-116, dippr-105, costald, point, kell, dippr-101-viscosity, perry-9, viswanath-3, exp-quadratic
	C              []float64 `yaml:"c,flow"`
	FromK          float64   `yaml:"from_k"`
	ToK            float64   `yaml:"to_k"`
	UnderstatesPct float64   `yaml:"understates_pct,omitempty"` // how far below the highest other source the equation lies
	Origin         `yaml:",inline"`
}

// Hazards are the statements a caution or a rule rests on. An absent flag is unknown and treated as present.
type Hazards struct {
	Flammable      *Flag   `yaml:"flammable,omitempty"`
	FlashPointC    *Number `yaml:"flash_point_c,omitempty"`
	LowerLimitPct  *Number `yaml:"lower_flammable_limit_pct,omitempty"`
	UpperLimitPct  *Number `yaml:"upper_flammable_limit_pct,omitempty"`
	AutoignitionC  *Number `yaml:"autoignition_c,omitempty"`
	Toxic          *Flag   `yaml:"toxic,omitempty"`
	Corrosive      *Flag   `yaml:"corrosive,omitempty"`
	Oxidiser       *Flag   `yaml:"oxidiser,omitempty"`
	Asphyxiant     *Flag   `yaml:"asphyxiant,omitempty"`
	Polymerises    *Flag   `yaml:"polymerises,omitempty"`
	PeroxideFormer *Flag   `yaml:"peroxide_former,omitempty"`
	Decomposes     *Flag   `yaml:"decomposes,omitempty"`
	Groups         *List   `yaml:"reaction_groups,omitempty"` // acid, strong-acid, base, hypochlorite, oxidiser, amine, isocyanate, epoxide, cyanide, sulfide, water, organic, reducing, acetylide-former, ammonia, halogen
}

// Electrical holds what a static assessment needs. The class is low below 50 pS/m, high above 10 000 pS/m.
type Electrical struct {
	Class          *Text   `yaml:"conductivity_class,omitempty"`
	ConductivityPS *Number `yaml:"conductivity_ps_m,omitempty"`
	Permittivity   *Number `yaml:"relative_permittivity,omitempty"`
}

// Hansen are solubility parameters in MPa^0.5.
type Hansen struct {
	D, P, H float64
	Origin  `yaml:",inline"`
}

// Reason is one id with why it is named.
type Reason struct {
	ID     string `yaml:"id"`
	Why    string `yaml:"why"`
	Origin `yaml:",inline"`
}

// Outlet assigns a cylinder outlet number of one connection family to the fluid.
type Outlet struct {
	Family string `yaml:"family"`
	Number string `yaml:"number"`
	Origin `yaml:",inline"`
}

// Bar is a legal bar: materials that contain any of the named constituents may not be wetted by the fluid,
// or, when Only is set, nothing but the named materials may be.
type Bar struct {
	Contains []string `yaml:"contains,omitempty,flow"` // tags of Material.Contains, e.g. copper
	Only     []string `yaml:"only,omitempty,flow"`     // material ids; nothing else of the metal family is allowed
	Regime   string   `yaml:"regime"`                  // whose law it is, e.g. 46 CFR 153
	Why      string   `yaml:"why"`
	Origin   `yaml:",inline"`
}

// Compatibility groups the rows by the family of the material, for the reader's eye.
type Compatibility struct {
	Elastomers     []Row `yaml:"elastomers,omitempty"`
	Plastics       []Row `yaml:"plastics,omitempty"`
	Metals         []Row `yaml:"metals,omitempty"`
	Gaskets        []Row `yaml:"gaskets,omitempty"`
	Reinforcements []Row `yaml:"reinforcements,omitempty"`
}

// Row says how one material bears the fluid within a strength and up to a temperature.
type Row struct {
	Material string  `yaml:"m"`
	Rating   string  `yaml:"rating"` // suitable, limited, unsuitable; an absent row means nothing is known
	Strength *Range  `yaml:"concentration,omitempty"`
	ToC      float64 `yaml:"to_c"` // highest temperature the row speaks for, degrees Celsius
	FromC    float64 `yaml:"from_c,omitempty"`
	Effect   string  `yaml:"effect,omitempty"`
	Family   bool    `yaml:"by_family,omitempty"` // set from the chemical family, not individually
	Origin   `yaml:",inline"`
}

// All returns the rows of every group in file order.
func (c Compatibility) All() []Row {
	var rows []Row
	for _, g := range [][]Row{c.Elastomers, c.Plastics, c.Metals, c.Gaskets, c.Reinforcements} {
		rows = append(rows, g...)
	}
	return rows
}
