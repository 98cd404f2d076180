package rules.static.splash_filling_test

import data.rules.static.splash_filling

# Ethyl acetate into an open tote without a dip pipe, as in CSB 2008-02-I-IA (published).
_point(more) := object.union(
	{
		"id": "tank.fill",
		"vessel": "tank",
		"target": true,
		"receives_flammable": true,
		"receives_liquid": true,
		"open_point": true,
	},
	more,
)

_found := {"subject": "tank.fill", "point": "tank.fill", "vessel": "tank"}

_cases := {
	"faulty": {
		"given": [_point({"entry": "splash"})],
		"want": {_found},
	},
	"twin, dip pipe": {
		"given": [_point({"entry": "dip-pipe"})],
		"want": set(),
	},
	"from below": {
		"given": [_point({"entry": "bottom"})],
		"want": set(),
	},
	"entry unknown": {
		"given": [_point({})],
		"want": set(),
	},
	"closed joint": {
		"given": [_point({"entry": "splash", "open_point": false})],
		"want": set(),
	},
	"gas": {
		"given": [_point({"entry": "splash", "receives_liquid": false})],
		"want": set(),
	},
	"nothing flammable": {
		"given": [_point({"entry": "splash", "receives_flammable": false})],
		"want": set(),
	},
	"a neighbour, not the point meant": {
		"given": [_point({"entry": "splash", "target": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_point({"entry": "dip-pipe"}), _point({"entry": "splash", "id": "tank.top"})],
		"want": {object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"both of two": {
		"given": [_point({"entry": "splash"}), _point({"entry": "splash", "id": "tank.top"})],
		"want": {_found, object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := splash_filling.report with input as {"points": tc.given}
	got == tc.want
}
