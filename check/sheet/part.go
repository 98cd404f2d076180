package sheet

import "lineworthy/check/units"

// Part is one part of a run. A key that does not belong to the part's kind is a fault.
type Part struct {
	ID       Of[string]            `sheet:"id,required"`
	Kind     Of[string]            `sheet:"kind,required,words=hose|pipe|fitting|valve|regulator|relief|check-valve|excess-flow|strainer|gauge|pump|coupling|breakaway|nozzle|weight|closure"`
	Name     Of[string]            `sheet:"name"`
	Material Of[string]            `sheet:"material"` // wetted body of anything but a hose
	Wetted   []Of[string]          `sheet:"wetted"`   // further wetted materials: seat, diaphragm, stem seal
	Size     Of[units.Size]        `sheet:"size"`
	Length   Of[units.Length]      `sheet:"length,kinds=hose|pipe"`
	Rated    Of[units.Pressure]    `sheet:"rated"`    // printed or stamped
	Evidence Of[string]            `sheet:"evidence"` // document, plate or certificate that states rated, limits and layers
	Lowest   Of[units.Temperature] `sheet:"lowest"`
	Highest  Of[units.Temperature] `sheet:"highest"`
	Bonded   Of[bool]              `sheet:"bonded"` // electrically bonded to earth or to its neighbours
	Inlet    *End                  `sheet:"inlet"`
	Outlet   *End                  `sheet:"outlet"`

	Class      Of[string]           `sheet:"class,kinds=hose"` // hose class, catalog id or name
	Edition    Of[string]           `sheet:"edition,kinds=hose"`
	Layers     Layers               `sheet:"layers,kinds=hose"`
	Bend       Of[units.Length]     `sheet:"bend,kinds=hose"`       // smallest installed radius
	LeastBend  Of[units.Length]     `sheet:"least_bend,kinds=hose"` // smallest radius its maker permits
	Burst      Of[units.Pressure]   `sheet:"burst,kinds=hose"`
	Retention  Of[string]           `sheet:"retention,kinds=hose,words=swaged|crimped|screwed-ferrule|clamp-shells|interlocking-clamp|screw-together|band|worm-drive|none"`
	Tail       Of[units.Size]       `sheet:"tail,kinds=hose"`        // size of the hose that the tails of its ends are made for
	Outside    Of[units.Length]     `sheet:"outside,kinds=hose"`     // measured outside diameter
	ClampLeast Of[units.Length]     `sheet:"clamp_least,kinds=hose"` // smallest outside diameter that its clamps are made for
	ClampMost  Of[units.Length]     `sheet:"clamp_most,kinds=hose"`
	Vacuum     Of[units.Pressure]   `sheet:"vacuum,kinds=hose"`   // lowest pressure its maker permits
	Tag        Of[string]           `sheet:"tag,kinds=hose"`      // identity read on the hose
	Assigned   Of[string]           `sheet:"assigned,kinds=hose"` // identity the line is approved with
	Marks      []Of[string]         `sheet:"marks,kinds=hose"`
	Readable   Of[bool]             `sheet:"readable,kinds=hose"`
	SpecFor    []Of[string]         `sheet:"specified_for,kinds=hose"` // fluids the maker names for it
	Listed     Of[string]           `sheet:"listed,kinds=hose"`        // laboratory that lists it; none when it is not
	Made       Of[units.Date]       `sheet:"made,kinds=hose"`
	Tested     Of[units.Date]       `sheet:"tested,kinds=hose|relief|regulator|breakaway"`
	TestEvery  Of[units.Months]     `sheet:"test_interval,kinds=hose|relief|regulator|breakaway"`
	TestedAt   Of[units.Pressure]   `sheet:"test_pressure,kinds=hose"`
	TestKind   Of[string]           `sheet:"test_kind,kinds=hose,words=hydrostatic|pneumatic|leak|visual"` // what was done on the day of tested
	Inspected  Of[units.Date]       `sheet:"inspected,kinds=hose"`
	Life       Of[units.Months]     `sheet:"life,kinds=hose"` // maker's or site's service life
	Grade      Of[string]           `sheet:"electrical,kinds=hose,words=M|Ohm|M/T|Ohm/T|discontinuous|none"`
	Resistance Of[units.Resistance] `sheet:"resistance,kinds=hose"` // end to end
	ResistTest Of[units.Date]       `sheet:"resistance_tested,kinds=hose"`
	Condition  []Of[string]         `sheet:"condition,kinds=hose,words=sound|kinked|crushed|cover-damaged|reinforcement-exposed|blistered|soft-spot|leaking|coupling-damaged|coupling-slipped|braid-damaged|cover-pricked"`

	Stages     Of[int]                   `sheet:"stages,kinds=regulator"`
	Set        Of[units.Pressure]        `sheet:"set,kinds=regulator|relief"`
	Flow       Of[units.FlowCoefficient] `sheet:"flow_coefficient,kinds=regulator|valve|check-valve"`
	InletRated Of[units.Pressure]        `sheet:"inlet_rated,kinds=regulator"`
	LockUp     Of[units.Fraction]        `sheet:"lock_up,kinds=regulator"` // rise above set at no flow, from its data sheet
	Area       Of[units.Area]            `sheet:"area,kinds=relief"`
	Kdr        Of[float64]               `sheet:"kdr,kinds=relief"`
	Shutoff    Of[units.Pressure]        `sheet:"shutoff,kinds=pump"` // highest pressure with the outlet closed
	Closing    Of[units.Duration]        `sheet:"closing,kinds=valve|check-valve|excess-flow|breakaway|coupling|nozzle"`
	ActsOn     Of[string]                `sheet:"acts_on,kinds=excess-flow|breakaway|coupling|valve,words=separation|signal|flow|hand"`
	ClosesAt   Of[units.VolumeFlow]      `sheet:"closing_flow,kinds=excess-flow"` // flow at which it closes, from its plate
	Broken     Of[units.VolumeFlow]      `sheet:"broken_flow,kinds=excess-flow"`  // flow that the line passes when what lies behind it is broken
	Bypass     Of[units.Length]          `sheet:"bypass,kinds=excess-flow"`       // diameter of its equalising hole; 0 mm for none
	Form       Of[string]                `sheet:"form,kinds=closure,words=cap|plug|blind-flange|dust-cap|none"`
	Range      Of[units.Pressure]        `sheet:"range,kinds=gauge"`       // full scale
	Isolatable Of[bool]                  `sheet:"isolatable,kinds=relief"` // a valve can cut it off from what it protects
	Fine       Of[bool]                  `sheet:"fine,kinds=strainer"`     // a fine filter, which charges the liquid
	Restraint  Of[units.Force]           `sheet:"restraint,kinds=hose"`    // rating of the whip restraint at both ends
	Lay        *Lay                      `sheet:"lay,kinds=hose"`
	Mount      *End                      `sheet:"mount,kinds=gauge|relief|closure"` // the end on the line that a branch part screws into
	Accuracy   Of[string]                `sheet:"accuracy,kinds=gauge"`
	OxyClean   Of[bool]                  `sheet:"oxygen_clean"`
}

// Layers names the materials of a hose where its class leaves a choice, or where the maker's paper says otherwise.
type Layers struct {
	Liner         Of[string] `sheet:"liner"`
	Reinforcement Of[string] `sheet:"reinforcement"`
	Cover         Of[string] `sheet:"cover"`
	Verified      Of[string] `sheet:"verified"` // how the alloy was verified; papers alone are a question
}

// Lay is how a hose is laid, from which its bend radius follows.
type Lay struct {
	Form    Of[string]       `sheet:"form,required,words=straight|u|quarter|offset"`
	Spacing Of[units.Length] `sheet:"spacing"` // between the two ends of a U
	Offset  Of[units.Length] `sheet:"offset"`  // sideways step between parallel ends
	Span    Of[units.Length] `sheet:"span"`    // along, between parallel ends
}
