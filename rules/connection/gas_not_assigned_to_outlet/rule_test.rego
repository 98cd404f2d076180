package rules.connection.gas_not_assigned_to_outlet_test

import data.rules.connection.gas_not_assigned_to_outlet

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"faulty": {"given": [_joint({"cylinder_outlet": true, "gas_listed": false})], "want": {_found}},
	"twin, put right": {"given": [_joint({"cylinder_outlet": true, "gas_listed": true})], "want": set()},
	"unknown": {"given": [_joint({"cylinder_outlet": true})], "want": set()},
	"open hatch, not a joint": {
		"given": [
			_joint({
				"cylinder_outlet": true,
				"gas_listed": false,
				"open_point": true,
			}),
		],
		"want": set(),
	},
	"the second of two joints": {
		"given": [
			_joint({"cylinder_outlet": true, "gas_listed": true}),
			_joint({"cylinder_outlet": true, "gas_listed": false, "id": "J2"}),
		],
		"want": {object.union(_found, {"subject": "J2"})},
	},
	"no joints": {"given": [], "want": set()},
	"not a cylinder outlet": {"given": [_joint({"cylinder_outlet": false, "gas_listed": false})], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := gas_not_assigned_to_outlet.report with input as {"joints": tc.given}
	got == tc.want
}
