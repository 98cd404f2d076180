package resolve

import (
	"lineworthy/catalog"
	"lineworthy/check/sheet"
	"lineworthy/check/units"
)

// Line is the sheet with every name resolved.
type Line struct {
	Sheet    *sheet.Line
	AsOf     units.Date
	Ambient  units.AbsolutePressure
	Fluids   []*Fluid
	Vessels  []*Vessel
	Runs     []*Run
	Nearby   []*Point
	Evidence []Evidence
	// Rows are the catalog rows the line rests on, kind/id against the digest of the row.
	Rows map[string]string
	// Sources turns a source id into the document it stands for.
	Sources func(id string) string
}

// Fluid is one fluid of the sheet with its catalog row and the row that holds its properties.
type Fluid struct {
	Key      string
	Role     string
	Sheet    *sheet.Fluid // nil for the contents of a vessel
	Cat      *catalog.Fluid
	Props    *catalog.Fluid
	Lowest   *units.Temperature // nil when neither the fluid nor the site states it
	Hottest  *units.Temperature
	Strength *units.Fraction // nil when not stated
	Services []string        // the words a hose standard uses for it
}

// Vessel is a source or destination.
type Vessel struct {
	Key      string
	Sheet    *sheet.Vessel
	Contents *Fluid
	Material *catalog.Material
	Points   map[string]*End
}

// Run is an ordered series of parts that carries the same fluids.
type Run struct {
	Key       string
	Sheet     *sheet.Run
	Fluids    []*Fluid
	Parts     []*Part
	Source    *Vessel // nil for a cylinder or a supply
	Target    *Vessel
	SourceEnd *End
	TargetEnd *End
	Test      *Fluid // what the run is pressure tested with; nil when no test is stated
	Joints    []*Joint
}

// Part is one part with its hose class, layers and materials.
type Part struct {
	ID     string
	Sheet  *sheet.Part
	Run    *Run
	Index  int
	Branch bool // sits beside the flow: gauge, relief device, hanging weight
	Hose   *catalog.Hose
	Layers []Layer
	Body   *catalog.Material
	Wetted []*catalog.Material
	Inlet  *End
	Outlet *End
	Mount  *End
}

// Layer is one layer of a hose. Material is nil when the class leaves a choice that the sheet does not make.
type Layer struct {
	Role     string
	Material *catalog.Material
	Options  []string
	Stated   bool
	Origin   catalog.Origin
}

// End is one connection end. A nil Sheet means that nothing was written about it.
type End struct {
	Owner    string
	Name     string
	Sheet    *sheet.End
	Family   *catalog.Connection
	Material *catalog.Material
	Part     *Part
	Vessel   *Vessel
	Path     string
}

// Joint is two ends that face each other and the seals between them.
type Joint struct {
	ID     string
	A, B   *End
	Run    *Run
	Seals  []*Seal
	Stated bool // the sheet says which seal, or that there is none
}

// Seal is one seal of a joint.
type Seal struct {
	ID       string
	Sheet    *sheet.Seal
	Kind     *catalog.Seal
	Material *catalog.Material
}

// Point is a receiving point the same hose can reach.
type Point struct {
	ID     string
	Sheet  *sheet.Nearby
	Vessel *Vessel
	End    *End
}

// Evidence is a document that speaks for or against a material in a fluid.
type Evidence struct {
	Sheet    *sheet.Evidence
	Material *catalog.Material
	Fluid    *catalog.Fluid
}
