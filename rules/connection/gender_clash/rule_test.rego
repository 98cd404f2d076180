package rules.connection.gender_clash_test

import data.rules.connection.gender_clash

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"faulty": {"given": [_joint({"gender": "same"})], "want": {_found}},
	"twin, put right": {"given": [_joint({"gender": "opposite"})], "want": set()},
	"unknown": {"given": [_joint({})], "want": set()},
	"open hatch, not a joint": {"given": [_joint({"gender": "same", "open_point": true})], "want": set()},
	"the second of two joints": {
		"given": [
			_joint({"gender": "opposite"}),
			_joint({"gender": "same", "id": "J2"}),
		],
		"want": {object.union(_found, {"subject": "J2"})},
	},
	"no joints": {"given": [], "want": set()},
	"question does not arise": {"given": [_joint({"gender": "none"})], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := gender_clash.report with input as {"joints": tc.given}
	got == tc.want
}
