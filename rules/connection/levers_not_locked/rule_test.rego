package rules.connection.levers_not_locked_test

import data.rules.connection.levers_not_locked

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"faulty": {"given": [_joint({"needs_locking": true, "locked": false})], "want": {_found}},
	"twin, put right": {"given": [_joint({"needs_locking": true, "locked": true})], "want": set()},
	"unknown": {"given": [_joint({"needs_locking": true})], "want": set()},
	"open hatch, not a joint": {
		"given": [_joint({"needs_locking": true, "locked": false, "open_point": true})],
		"want": set(),
	},
	"the second of two joints": {
		"given": [
			_joint({"needs_locking": true, "locked": true}),
			_joint({"needs_locking": true, "locked": false, "id": "J2"}),
		],
		"want": {object.union(_found, {"subject": "J2"})},
	},
	"no joints": {"given": [], "want": set()},
	"coupling that needs no locking": {"given": [_joint({"needs_locking": false, "locked": false})], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := levers_not_locked.report with input as {"joints": tc.given}
	got == tc.want
}
