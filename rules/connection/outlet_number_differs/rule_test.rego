package rules.connection.outlet_number_differs_test

import data.rules.connection.outlet_number_differs

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"faulty": {"given": [_joint({"cylinder_outlet": true, "outlet_number": "differs"})], "want": {_found}},
	"twin, put right": {"given": [_joint({"cylinder_outlet": true, "outlet_number": "same"})], "want": set()},
	"unknown": {"given": [_joint({"cylinder_outlet": true})], "want": set()},
	"open hatch, not a joint": {
		"given": [
			_joint({
				"cylinder_outlet": true,
				"outlet_number": "differs",
				"open_point": true,
			}),
		],
		"want": set(),
	},
	"the second of two joints": {
		"given": [
			_joint({"cylinder_outlet": true, "outlet_number": "same"}),
			_joint({
				"cylinder_outlet": true,
				"outlet_number": "differs",
				"id": "J2",
			}),
		],
		"want": {object.union(_found, {"subject": "J2"})},
	},
	"no joints": {"given": [], "want": set()},
	"question does not arise": {
		"given": [_joint({"cylinder_outlet": true, "outlet_number": "none"})],
		"want": set(),
	},
	"not a cylinder outlet": {
		"given": [_joint({"cylinder_outlet": false, "outlet_number": "differs"})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := outlet_number_differs.report with input as {"joints": tc.given}
	got == tc.want
}
