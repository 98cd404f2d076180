package sequence

// Fault is one thing that must not happen, at the step that brings it about.
type Fault struct {
	Step   int    `json:"step"` // from 1; one past the last for what is left at the end
	Name   string `json:"name"` // one of the names below
	Item   string `json:"item"`
	Says   string `json:"says"`
	Do     string `json:"do"`
	Source string `json:"source"`
}

// The names of faults.
const (
	BlockedIn        = "liquid blocked in"
	UnderPressure    = "disconnecting under pressure"
	WithLiquid       = "disconnecting with liquid inside"
	Backflow         = "backflow"
	QuickOxygen      = "oxygen opened quickly into a dead end"
	Overfill         = "overfill"
	PadLeft          = "pad left on a closed vessel"
	ReverseOrder     = "reverse order"
	DeadPump         = "pump against a closed outlet"
	NotConnected     = "opened before connected"
	VentedLive       = "vented with the source open"
	SetTooHigh       = "set above the sheet"
	SourceLeft       = "source left open"
	OpenEnd          = "disconnecting with the destination open"
	NoWay            = "transfer without an open way"
	ConnectedUnbound = "connected before bonded"
	Vacuum           = "vacuum in a closed source"
	Squeezed         = "pressure in a closed destination"
	Stalls           = "flow stops before the quantity"
	RunDry           = "source emptied"
	RegulatorLeft    = "regulator left set"
	NotFlushed       = "left without flushing"
	FlushLeft        = "flush left in the line"
	FlushIntoSource  = "flushed with the source open"
	FlushAstray      = "flush let into the destination"
	FlushedProduct   = "product flushed into the drain"
	FlushShort       = "flush too small"
	FlushReacts      = "flush reacts"
	DryPump          = "pump without liquid"
	OpenBack         = "destination opened without its hose"
	VentsLiquid      = "vented with liquid inside"
	VentsToxic       = "toxic vented into the open"
	SetEarly         = "source opened on a set regulator"
	GasLeft          = "gas left under pressure"
	GoesOn           = "flow not stopped"
)

const practice = "practice, no source"

// remedy is what to do instead, and who says so. Federal law is the 2015 edition: check the current code.
var remedy = map[string][2]string{
	BlockedIn:        {"Close the source first, let the stretch run empty, then close its other end; or fit a relief device between the two.", "29 CFR 1910.111(b)(9)(ix) for ammonia (published); else " + practice},
	UnderPressure:    {"Close the source, vent the stretch and read its gauge at zero, then disconnect.", practice},
	WithLiquid:       {"Drain the stretch into the destination or a closed drain before disconnecting.", practice},
	Backflow:         {"Raise the pressure of the source above that of the destination first, or fit a check valve.", practice},
	QuickOxygen:      {"Open it slowly, over several seconds: gas squeezed quickly in a dead end gets hot enough to ignite what it meets.", "ASTM G88 and G63 (recalled)"},
	Overfill:         {"Transfer less, or empty the destination further first.", "95 %, " + practice},
	PadLeft:          {"Close the gas source, back the regulator off and vent the vessel.", practice},
	ReverseOrder:     {"Open from the destination towards the source, and close the source first.", practice},
	DeadPump:         {"Open the way to the destination before the pump starts; stop the pump before the way is closed.", practice},
	NotConnected:     {"Make every connection, and check it, before any valve of the source opens.", "49 CFR 174.67(h) for rail tank cars (published); else " + practice},
	VentedLive:       {"Close the source before venting or draining.", practice},
	SetTooHigh:       {"Set it as the sheet says, or change the sheet and have the line judged anew.", practice},
	SourceLeft:       {"Close the valve of the source.", practice},
	OpenEnd:          {"Close the valve at the destination before the hose comes off: what stands behind it can run back.", practice},
	NoWay:            {"Open every valve between source and destination first, and give the source the pressure to move the liquid.", practice},
	Vacuum:           {"Keep the vent open, or a gas following at its set pressure, for as long as liquid is taken out; state in the sheet which.", "API Std 2000 names emptying a tank as a cause of vacuum (recalled); else " + practice},
	Squeezed:         {"Keep the vent or a vapour return of the destination open for as long as liquid comes in; state in the sheet which.", "API Std 2000 names filling a tank as a cause of overpressure (recalled); else " + practice},
	Stalls:           {"Let the gas of the destination out, through a vent or a vapour return, or transfer less.", practice},
	RunDry:           {"Transfer less than the source holds, and stop before its outlet is bare.", practice},
	RegulatorLeft:    {"Back the regulator off once its source is closed and the line is vented: the next opening then comes in slowly.", practice},
	NotFlushed:       {"Flush the stretch as the sheet says, let it run empty, then take the hose off.", practice},
	FlushLeft:        {"Let the flush run out before product comes in.", practice},
	FlushIntoSource:  {"Close the source, and drain the stretch, before the flush goes in.", practice},
	FlushAstray:      {"Close the valve at the destination first, or write no drain and count the flush into its level.", practice},
	FlushedProduct:   {"Drain the product into the destination before the flush goes in.", practice},
	FlushShort:       {"Use at least the volume of the stretch; three times that is usual.", practice},
	FlushReacts:      {"Take a flush that reacts with neither; after a reacting one, blow the stretch dry before product comes. Blowing out leaves a film of product. Ask the safety data sheets of both.", "CSB case study, mixed chemicals at a Kansas plant in 2016 (published); 46 CFR part 150, compatibility of cargoes (recalled)"},
	DryPump:          {"Open the way from the source before the pump starts, and stop the pump before it is closed.", practice},
	OpenBack:         {"Connect the hose before the valve at the destination opens, and leave it closed once the hose is off.", practice},
	VentsLiquid:      {"Let the stretch run empty into the destination or a closed drain first: a vent lets liquid out as a jet.", practice},
	VentsToxic:       {"Vent into an absorber or a closed vent.", practice},
	SetEarly:         {"Back the regulator off, open the source slowly, then set the regulator: the full pressure must not strike an open seat.", practice},
	GasLeft:          {"Vent the stretch, with the regulator still set, until its gauges read zero; then back the regulator off.", practice},
	GoesOn:           {"Stop its pump and close its source once its quantity is through, before the next transfer begins.", practice},
	ConnectedUnbound: {"Bond the receiving vessel first, then the source, then connect.", "49 CFR 177.837(b) (published)"},
}

func (p *play) fault(name, item, says string) {
	if p.told(name, item) {
		return // told once, where it begins
	}
	r := remedy[name]
	p.out.Faults = append(p.out.Faults, Fault{Step: p.at, Name: name, Item: item, Says: says, Do: r[0], Source: r[1]})
}
