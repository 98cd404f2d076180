package rules.identity.point_holds_another_fluid_test

import data.rules.identity.point_holds_another_fluid

# Acid into the hypochlorite tank, as in the CSB case study of January 2018 (published).
_point(more) := object.union(
	{"id": "tank.fill", "vessel": "tank", "target": true},
	more,
)

_found := {"subject": "tank.fill", "point": "tank.fill", "vessel": "tank"}

_cases := {
	"faulty": {
		"given": [_point({"same_fluid": false})],
		"want": {_found},
	},
	"twin, the right tank": {
		"given": [_point({"same_fluid": true})],
		"want": set(),
	},
	"contents unknown": {
		"given": [_point({})],
		"want": set(),
	},
	"a neighbour, not the point meant": {
		"given": [_point({"same_fluid": false, "target": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_point({"same_fluid": true}), _point({"same_fluid": false, "id": "tank.top"})],
		"want": {object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"both of two": {
		"given": [_point({"same_fluid": false}), _point({"same_fluid": false, "id": "tank.top"})],
		"want": {_found, object.union(_found, {"subject": "tank.top", "point": "tank.top"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := point_holds_another_fluid.report with input as {"points": tc.given}
	got == tc.want
}
