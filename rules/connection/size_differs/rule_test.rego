package rules.connection.size_differs_test

import data.rules.connection.size_differs

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"faulty": {"given": [_joint({"size": "differs"})], "want": {_found}},
	"twin, put right": {"given": [_joint({"size": "same"})], "want": set()},
	"unknown": {"given": [_joint({})], "want": set()},
	"open hatch, not a joint": {"given": [_joint({"size": "differs", "open_point": true})], "want": set()},
	"the second of two joints": {
		"given": [_joint({"size": "same"}), _joint({"size": "differs", "id": "J2"})],
		"want": {object.union(_found, {"subject": "J2"})},
	},
	"no joints": {"given": [], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := size_differs.report with input as {"joints": tc.given}
	got == tc.want
}
