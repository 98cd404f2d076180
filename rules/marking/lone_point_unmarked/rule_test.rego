package rules.marking.lone_point_unmarked_test

import data.rules.marking.lone_point_unmarked

# Practice, no source. With a neighbour or dangerous contents another rule says stop.
_point(more) := object.union(
	{"id": "tank.fill", "vessel": "tank", "target": true, "neighbours_stated": false},
	more,
)

_found := {"subject": "tank.fill", "point": "tank.fill", "vessel": "tank"}

_cases := {
	"faulty": {
		"given": [_point({"marked": false, "hazardous": false})],
		"want": {_found},
	},
	"contents unknown": {
		"given": [_point({"marked": false})],
		"want": {_found},
	},
	"dangerous contents": {
		"given": [_point({"marked": false, "hazardous": true})],
		"want": set(),
	},
	"with a neighbour": {
		"given": [_point({"marked": false, "hazardous": false, "neighbours_stated": true})],
		"want": set(),
	},
	"not the point meant": {
		"given": [_point({"marked": false, "hazardous": false, "target": false})],
		"want": set(),
	},
	"twin, labelled": {
		"given": [_point({"marked": true, "hazardous": false})],
		"want": set(),
	},
	"label unknown": {
		"given": [_point({"hazardous": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_point({"marked": true, "hazardous": false}),
			_point({"marked": false, "hazardous": false, "id": "tank.top"}),
		],
		"want": {object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"both of two": {
		"given": [
			_point({"marked": false, "hazardous": false}),
			_point({"marked": false, "hazardous": false, "id": "tank.top"}),
		],
		"want": {_found, object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := lone_point_unmarked.report with input as {"points": tc.given}
	got == tc.want
}
