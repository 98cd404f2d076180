package sheet

import "lineworthy/check/units"

// Pos is a place in the sheet, counted from 1.
type Pos struct{ Line, Col int }

// Of is one leaf of the sheet: its value, whether it was written, where, and the text as typed.
type Of[T any] struct {
	V    T
	Set  bool
	Pos  Pos
	Text string
}

// Named is one entry of a mapping whose keys the author chooses, in the order written.
type Named[T any] struct {
	Key string
	Pos Pos
	V   T
}

// Line is one transfer line as its sheet describes it. Tags give the key, whether it must be there,
// the closed list of words it may hold, and the kinds of part it belongs to.
type Line struct {
	File       string          `sheet:"-"`
	Sum        string          `sheet:"-"` // SHA-256 of the text, hex, without a byte-order mark
	ID         Of[string]      `sheet:"line,required"`
	Title      Of[string]      `sheet:"title"`
	AsOf       Of[units.Date]  `sheet:"as_of"`
	Regimes    []Of[string]    `sheet:"regimes"`
	Site       Site            `sheet:"site"`
	Fluids     []Named[Fluid]  `sheet:"fluids,required"`
	Vessels    []Named[Vessel] `sheet:"vessels"`
	Runs       []Named[Run]    `sheet:"runs,required"`
	Nearby     []Nearby        `sheet:"nearby"`
	Safeguards Safeguards      `sheet:"safeguards"`
	Change     *Change         `sheet:"change"`
	Evidence   []Evidence      `sheet:"evidence"`
	Pos        map[string]Pos  `sheet:"-"` // position of every path, items counted from 0, e.g. runs.liquid.parts[2].inlet: the key, or the value of a leaf
}

// Site is the place: its extremes, sun and height.
type Site struct {
	Lowest   Of[units.Temperature] `sheet:"lowest"`
	Highest  Of[units.Temperature] `sheet:"highest"`
	Sun      Of[string]            `sheet:"sun,words=exposed|shaded|indoors"`
	Altitude Of[units.Length]      `sheet:"altitude,signed"`
	Room     Of[units.Volume]      `sheet:"room"` // net volume of the room the line runs through
}

// Fluid is one fluid the line meets, under the name the sheet gives it.
type Fluid struct {
	Fluid         Of[string]             `sheet:"fluid,required"` // catalog id or name
	Role          Of[string]             `sheet:"role,words=product|pad|flush|previous|test|steam"`
	Concentration Of[units.Fraction]     `sheet:"concentration"`
	Temperature   Temperatures           `sheet:"temperature"`
	Exposure      Of[string]             `sheet:"exposure"`
	Dryness       Of[string]             `sheet:"dryness,words=dry|moist"`
	OilFree       Of[bool]               `sheet:"oil_free"`
	Conductivity  Of[units.Conductivity] `sheet:"conductivity"`
	Evidence      Of[string]             `sheet:"evidence"`                  // document that states the conductivity and the vapour pressure
	Zone          Of[string]             `sheet:"hazard_zone,words=A|B|C|D"` // of a toxic gas, 49 CFR 173.116
	Vapour        Of[units.Pressure]     `sheet:"vapour_pressure"`           // at the highest temperature, from its safety data sheet; of steam, that of its supply
}

// Temperatures are the fluid's own extremes.
type Temperatures struct {
	Lowest  Of[units.Temperature] `sheet:"lowest"`
	Normal  Of[units.Temperature] `sheet:"normal"`
	Highest Of[units.Temperature] `sheet:"highest"`
}

// Vessel is a source or destination that holds fluid.
type Vessel struct {
	Kind         Of[string]            `sheet:"kind,words=cylinder|drum|ibc|tanker|tank|pressure-vessel|tote|process-vessel"`
	Volume       Of[units.Volume]      `sheet:"volume"`
	Filled       Of[units.Fraction]    `sheet:"filled"`
	Rated        Of[units.Pressure]    `sheet:"rated"`
	TestPressure Of[units.Pressure]    `sheet:"test_pressure"`
	Code         Of[string]            `sheet:"code,words=ASME-VIII|PED|UN-portable-tank|other"` // the code it is built to
	Vacuum       Of[units.Pressure]    `sheet:"vacuum"`                                          // lowest pressure its plate or its maker permits
	Pressure     Of[units.Pressure]    `sheet:"pressure"`                                        // highest pressure that stands in it by itself, or that others push into it
	Evidence     Of[string]            `sheet:"evidence"`
	Lowest       Of[units.Temperature] `sheet:"lowest"`
	Highest      Of[units.Temperature] `sheet:"highest"`
	Relief       *Relief               `sheet:"relief"`
	Vent         Of[string]            `sheet:"vent,words=open|closed"`
	VentCapacity Of[units.VolumeFlow]  `sheet:"vent_capacity"` // free gas (1 atm, 15 °C) that the open vent passes at the rated pressure
	Insulated    Of[bool]              `sheet:"insulated"`
	Discharge    Of[units.Pressure]    `sheet:"discharge_limit"` // highest discharge pressure marked on an IBC or tank
	Contains     *Contents             `sheet:"contains"`
	Material     Of[string]            `sheet:"material"`
	Bonded       Of[bool]              `sheet:"bonded"`
	Points       []Named[End]          `sheet:"points"`
}

// Relief is a relief device on a vessel.
type Relief struct {
	Set  Of[units.Pressure] `sheet:"set,required"`
	Area Of[units.Area]     `sheet:"area"`
	Kdr  Of[float64]        `sheet:"kdr"`

	Vacuum Of[units.Pressure] `sheet:"vacuum"` // lets air or gas in from this pressure on
}

// Contents is what a vessel holds when it is not one of the line's own fluids.
type Contents struct {
	Fluid         Of[string]         `sheet:"fluid,required"`
	Concentration Of[units.Fraction] `sheet:"concentration"`
}

// Run is an ordered series of parts that carries the same fluids.
type Run struct {
	Carries  []Of[string]         `sheet:"carries,required"` // names under fluids
	Source   Source               `sheet:"source,required"`
	To       Target               `sheet:"to,required,scalar=vessel"`
	Flow     Of[units.VolumeFlow] `sheet:"flow"`
	Quantity Of[units.Volume]     `sheet:"quantity"`
	Drained  Of[bool]             `sheet:"drained"` // emptied after every transfer, by procedure
	Test     *Test                `sheet:"test"`    // the pressure test of the run as laid
	Parts    []Part               `sheet:"parts,required"`
}

// Test is the pressure test of a run, parts and ends as they stand in the line. It is no part of the transfer: the fluid
// it is made with need not be among those the run carries.
type Test struct {
	Pressure Of[units.Pressure] `sheet:"pressure,required"`
	Fluid    Of[string]         `sheet:"fluid,required"` // name under fluids
	Isolated []Of[string]       `sheet:"isolated"`       // parts and vessels that are shut off by a blank or taken out
	Relief   Of[units.Pressure] `sheet:"relief"`         // set pressure of the relief device that limits the test
	Distance Of[units.Length]   `sheet:"distance"`       // nobody comes nearer while the pressure is on
	Dried    Of[bool]           `sheet:"dried"`          // the test liquid is let out and the line dried before use
}

// Source is where a run starts: a vessel's point, a cylinder, or a supply at a stated highest pressure.
type Source struct {
	Vessel       Of[string]         `sheet:"vessel"`
	Outlet       Of[string]         `sheet:"outlet"` // name under the vessel's points
	Cylinder     Of[units.Pressure] `sheet:"cylinder"`
	Supply       Of[units.Pressure] `sheet:"supply"`
	Volume       Of[units.Volume]   `sheet:"volume"`
	Head         Of[units.Length]   `sheet:"head,signed"`   // height of the liquid level above the lowest point of the run
	ReliefFitted Of[bool]           `sheet:"relief_fitted"` // the cylinder has a relief device
	End          *End               `sheet:"end"`
}

// Target is where a run ends.
type Target struct {
	Vessel Of[string] `sheet:"vessel"`
	Inlet  Of[string] `sheet:"inlet"` // name under the vessel's points
	End    *End       `sheet:"end"`
}

// End is one connection end: of a part, or a point of a vessel.
type End struct {
	Standard Of[string]     `sheet:"standard"` // connection family, catalog id or name
	Size     Of[units.Size] `sheet:"size"`
	Class    Of[string]     `sheet:"class"`  // class, PN or series
	Number   Of[string]     `sheet:"number"` // cylinder outlet number
	Gender   Of[string]     `sheet:"gender,words=male|female|none"`
	Hand     Of[string]     `sheet:"hand,words=right|left"`
	Facing   Of[string]     `sheet:"facing"`
	Material Of[string]     `sheet:"material"`
	Locked   Of[bool]       `sheet:"locked"` // levers pinned, ring turned
	Keyed    Of[string]     `sheet:"keyed"`  // fluid-specific key; none when it has none
	Open     Of[bool]       `sheet:"open"`   // open point: hatch, funnel, open top
	Entry    Of[string]     `sheet:"entry,words=dip-pipe|bottom|splash"`
	Marked   Of[string]     `sheet:"marked"` // text of the label at the point; none when unmarked
	Padlock  Of[bool]       `sheet:"padlocked"`
	ClosedBy Of[string]     `sheet:"closed_by,words=valve|cap|plug|blind-flange|dust-cap|piped|none"` // of a point this line does not use
	Bolts    Of[int]        `sheet:"bolts"`                                                           // fitted in the joint at this end
	Seals    []Seal         `sheet:"seal,single,none=NoSeal"`                                         // a mapping, a list, or the word none
	NoSeal   Of[bool]       `sheet:"-"`                                                               // seal: none was written
}

// Seal is what makes one joint tight.
type Seal struct {
	Kind     Of[string]         `sheet:"kind,required"`
	Size     Of[units.Size]     `sheet:"size"`
	Material Of[string]         `sheet:"material"`
	Rated    Of[units.Pressure] `sheet:"rated"`
	Evidence Of[string]         `sheet:"evidence"`
}

// Nearby is a receiving point that the same hose can reach.
type Nearby struct {
	Vessel   Of[string]       `sheet:"vessel,required"`
	Point    Of[string]       `sheet:"point,required"`
	Distance Of[units.Length] `sheet:"distance"`
}

// Safeguards are the means that end or watch the transfer.
type Safeguards struct {
	RemoteStop    Of[bool]       `sheet:"remote_stop"`    // can be worked from outside the hazard zone
	AutomaticStop Of[bool]       `sheet:"automatic_stop"` // acts without a person
	Attended      Of[bool]       `sheet:"attended"`
	StopTested    Of[units.Date] `sheet:"stop_tested"` // day the stop was last worked
}

// Change is the record of the change this sheet brings.
type Change struct {
	Record     Of[string]     `sheet:"record"`
	What       Of[string]     `sheet:"what,required"`
	InKind     Of[bool]       `sheet:"in_kind"`
	Authorised Of[units.Date] `sheet:"authorised"`
	Basis      Of[bool]       `sheet:"basis"`      // the record states the technical basis
	Effects    Of[bool]       `sheet:"effects"`    // the record states the effects on safety and health
	Procedures Of[bool]       `sheet:"procedures"` // the record states the changes to procedures, or that there are none
	Trained    Of[bool]       `sheet:"trained"`    // those who work the line were told and trained before it is used
	Until      Of[units.Date] `sheet:"until"`      // last day of a temporary change
}

// Evidence is a document that speaks for or against a material in a fluid.
type Evidence struct {
	Material Of[string]            `sheet:"material,required"`
	Fluid    Of[string]            `sheet:"fluid,required"`
	Rating   Of[string]            `sheet:"rating,required,words=suitable|limited|unsuitable"`
	Highest  Of[units.Temperature] `sheet:"highest,required"`
	Document Of[string]            `sheet:"document,required"`
}
