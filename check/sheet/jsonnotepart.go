package sheet

// partNotes say what the keys of a part and of what belongs to it are for.
var partNotes = map[string]string{
	"id": "your name for the part, once on the line", "kind": "what it is", "name": "what you call it", "material": "wetted body of anything but a hose",
	"wetted": "further wetted materials: seat, diaphragm, stem seal", "size": "e.g. DN 25, NPS 1, 1/2 in, -16", "length": "of a hose or pipe",
	"rated": "working pressure printed or stamped on it", "evidence": "plate, certificate or data sheet that states pressure, temperatures and layers",
	"lowest": "coldest it may get", "highest": "hottest it may get", "bonded": "electrically bonded to earth or its neighbours",
	"inlet": "end towards the source", "outlet": "end towards the destination", "class": "hose class, name or id in the catalog", "edition": "edition of the hose standard",
	"layers": "materials of the hose", "bend": "smallest installed bend radius", "least_bend": "smallest bend radius its maker permits", "burst": "burst pressure of its certificate",
	"vacuum": "lowest pressure it may be drawn down to", "tag": "identity read on the hose", "assigned": "identity the line is approved with",
	"marks": "what is printed on the hose, piece by piece", "readable": "whether the marks can be read", "specified_for": "fluids its maker names for it",
	"listed": "laboratory that lists it; none when it is not", "made": "when it was made", "tested": "last pressure test", "test_interval": "e.g. 12 months", "test_pressure": "of the last test", "inspected": "last visual inspection",
	"retention": "what holds the ends on the hose", "tail": "size of hose that the tails of its ends are made for", "outside": "measured outside diameter", "clamp_least": "smallest outside diameter its clamps are made for", "clamp_most": "largest outside diameter its clamps are made for", "test_kind": "what was done on the day of tested",
	"closing_flow": "flow at which it closes, from its plate", "broken_flow": "flow the line passes when what lies behind the valve is broken", "bypass": "diameter of its equalising hole; 0 mm for none", "form": "what closes the end", "life": "service life of maker or site", "electrical": "electrical grade of the assembly", "resistance": "measured end to end", "resistance_tested": "day of the measurement",
	"condition": "what the visual inspection found", "stages": "of the regulator", "set": "set pressure", "flow_coefficient": "Cv or Kv, wide open",
	"inlet_rated": "rated inlet pressure", "lock_up": "rise above set at no flow, from its data sheet", "area": "flow area of the relief device", "kdr": "certified coefficient of discharge, derated",
	"shutoff": "highest pressure with the outlet closed", "closing": "how long it takes to close", "acts_on": "what makes it close", "range": "full scale of the gauge",
	"isolatable": "whether a valve can cut it off from what it protects", "fine": "a fine filter, which charges the liquid", "restraint": "rating of the whip restraint at both ends",
	"lay": "how the hose is laid", "mount": "the end on the line that it screws into", "accuracy": "class of the gauge", "oxygen_clean": "cleaned for oxygen, with a record",
}

func init() {
	for key, note := range map[string]string{
		"Layers.liner": "innermost layer", "Layers.reinforcement": "braid or fabric", "Layers.cover": "outermost layer", "Layers.verified": "how the alloy was verified; papers alone are a question",
		"Lay.form": "straight, hung in a U, a quarter bend or an offset", "Lay.spacing": "between the two ends of a U", "Lay.offset": "sideways step between parallel ends",
		"Lay.span": "along, between parallel ends", "Lay.moves": "whether it moves in use",
	} {
		schemaNotes[key] = note
	}
}
