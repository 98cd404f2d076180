package rules.marking.point_unmarked_among_others_test

import data.rules.marking.point_unmarked_among_others

# Two unlabelled points 0.46 m apart, as in the CSB case study of January 2018 (published).
_point(more) := object.union(
	{"id": "tank.fill", "vessel": "tank", "target": true, "neighbours_stated": true},
	more,
)

_found := {"subject": "tank.fill", "point": "tank.fill", "vessel": "tank"}

_cases := {
	"the point meant, with a neighbour": {
		"given": [_point({"marked": false})],
		"want": {_found},
	},
	"a neighbour of the point meant": {
		"given": [_point({"marked": false, "target": false, "neighbours_stated": false})],
		"want": {_found},
	},
	"alone, but dangerous contents": {
		"given": [_point({"marked": false, "neighbours_stated": false, "hazardous": true})],
		"want": {_found},
	},
	"alone, contents harmless": {
		"given": [_point({"marked": false, "neighbours_stated": false, "hazardous": false})],
		"want": set(),
	},
	"alone, contents unknown": {
		"given": [_point({"marked": false, "neighbours_stated": false})],
		"want": set(),
	},
	"twin, labelled": {
		"given": [_point({"marked": true})],
		"want": set(),
	},
	"label unknown": {
		"given": [_point({})],
		"want": set(),
	},
	"the second of two": {
		"given": [_point({"marked": true}), _point({"marked": false, "id": "tank.top"})],
		"want": {object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"both of two": {
		"given": [_point({"marked": false}), _point({"marked": false, "id": "tank.top"})],
		"want": {_found, object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := point_unmarked_among_others.report with input as {"points": tc.given}
	got == tc.want
}
