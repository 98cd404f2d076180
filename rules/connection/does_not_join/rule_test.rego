package rules.connection.does_not_join_test

import data.rules.connection.does_not_join

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"faulty": {"given": [_joint({"mate": "no-fit"})], "want": {_found}},
	"twin, put right": {"given": [_joint({"mate": "fits"})], "want": set()},
	"unknown": {"given": [_joint({})], "want": set()},
	"open hatch, not a joint": {"given": [_joint({"mate": "no-fit", "open_point": true})], "want": set()},
	"the second of two joints": {
		"given": [_joint({"mate": "fits"}), _joint({"mate": "no-fit", "id": "J2"})],
		"want": {object.union(_found, {"subject": "J2"})},
	},
	"no joints": {"given": [], "want": set()},
	"what joins but must not is another rule": {"given": [_joint({"mate": "stop"})], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := does_not_join.report with input as {"joints": tc.given}
	got == tc.want
}
