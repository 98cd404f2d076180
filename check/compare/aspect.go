package compare

import "slices"

// The aspects of a design by which 29 CFR 1910.119(l)(1) is answered here, and those of mere records.
const (
	aMaterial    = "material"
	aRating      = "rating"
	aClass       = "class"
	aConnection  = "connection"
	aSeal        = "seal"
	aRelief      = "relief"
	aFluid       = "fluid"
	aTemperature = "temperature"
	aSize        = "size"
	aSetting     = "setting"
	aRun         = "run"
	aVessel      = "vessel"
	aSafeguard   = "safeguard"
	aPart        = "part"
	aIdentity    = "identity"
	aRecord      = "record"
)

// aspects say what the keys of each mapping of the sheet are about. A key that is not listed is a setting: a new key must
// not make a change look like a record.
var aspects = map[string]map[string][]string{
	"Line": {aRecord: {"line", "title", "as_of", "regimes"}},
	"Site": {aTemperature: {"lowest", "highest"}, aRun: {"sun", "altitude", "room"}},
	"Fluid": {
		aFluid: {"fluid", "role", "concentration", "dryness", "oil_free", "conductivity", "hazard_zone", "exposure", "vapour_pressure"}, aRecord: {"evidence"},
	},
	"Temperatures": {aTemperature: {"lowest", "normal", "highest"}},
	"Contents":     {aFluid: {"fluid", "concentration"}},
	"Vessel": {
		aVessel: {"kind", "code", "volume", "filled", "vent", "vent_capacity", "insulated", "bonded", "pressure"}, aRating: {"rated", "test_pressure", "discharge_limit", "vacuum"},
		aTemperature: {"lowest", "highest"}, aMaterial: {"material"}, aRecord: {"evidence"},
	},
	"Relief":     {aRelief: {"set", "area", "kdr", "vacuum"}},
	"Run":        {aFluid: {"carries"}, aRun: {"flow", "quantity", "drained"}},
	"Test":       {aFluid: {"fluid"}, aRun: {"pressure", "isolated", "distance", "dried"}, aRelief: {"relief"}},
	"Source":     {aRun: {"vessel", "outlet", "cylinder", "supply", "volume", "head"}, aRelief: {"relief_fitted"}},
	"Target":     {aRun: {"vessel", "inlet"}},
	"Nearby":     {aRun: {"vessel", "point", "distance"}},
	"Safeguards": {aSafeguard: {"remote_stop", "automatic_stop", "attended"}, aRecord: {"stop_tested"}},
	"Evidence":   {aRecord: {"material", "fluid", "rating", "highest", "document"}},
	"Layers":     {aMaterial: {"liner", "reinforcement", "cover"}, aRecord: {"verified"}},
	"Lay":        {aSize: {"form", "spacing", "offset", "span", "moves"}},
	"Seal":       {aSeal: {"kind", "size", "material", "rated"}, aRecord: {"evidence"}},
	"End": {
		aConnection: {"standard", "size", "number", "gender", "hand", "facing", "locked", "keyed", "open", "entry", "padlocked", "closed_by", "bolts"},
		aClass:      {"class"}, aMaterial: {"material"}, aSeal: {"seal"}, aRecord: {"marked"},
	},
	"Part": {
		aPart: {"kind", "form"}, aMaterial: {"material", "wetted"}, aRating: {"rated", "burst", "inlet_rated", "restraint", "range", "vacuum", "retention", "closing_flow", "broken_flow", "bypass"},
		aClass: {"class", "edition", "electrical"}, aTemperature: {"lowest", "highest"}, aSize: {"size", "length", "bend", "least_bend", "tail", "outside", "clamp_least", "clamp_most"},
		aRelief: {"area", "kdr", "isolatable"}, aSafeguard: {"bonded", "oxygen_clean"}, aIdentity: {"id", "tag", "assigned"},
		aRecord: {
			"name", "evidence", "marks", "readable", "specified_for", "listed", "made", "tested", "test_interval", "test_pressure", "test_kind", "inspected",
			"life", "resistance", "resistance_tested", "condition",
		},
	},
}

// aspectOf is what a value of a thing is about.
func aspectOf(t thing, l leaf) string {
	if l.owner == "Part" && t.kind == "relief" && l.name == "set" {
		return aRelief
	}
	for aspect, keys := range aspects[l.owner] {
		if slices.Contains(keys, l.name) {
			return aspect
		}
	}
	return aSetting
}

// design says whether the aspect is part of the specification that a replacement must satisfy.
func design(aspect string) bool { return aspect != aRecord && aspect != aIdentity }

// decisive are the values without which nobody can say that a swapped part is like the one before it.
var decisive = map[string][]string{
	"hose":  {"class", "size", "rated", "layers.liner", "inlet.standard", "outlet.standard"},
	"other": {"material", "size", "rated"},
}
