package rules.seal.two_in_one_joint_test

import data.rules.seal.two_in_one_joint

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"no seal is another rule": {"given": [_joint({"seal_count": 0})], "want": set()},
	"twin, one seal": {"given": [_joint({"seal_count": 1})], "want": set()},
	"two washers": {
		"given": [_joint({"seal_count": 2})],
		"want": {object.union(_found, {"have_count": 2, "need_count": 1})},
	},
	"seal not stated": {"given": [_joint({})], "want": set()},
	"open hatch, not a joint": {"given": [_joint({"seal_count": 2, "open_point": true})], "want": set()},
	"second of two joints": {
		"given": [_joint({"seal_count": 1}), _joint({"id": "J2", "seal_count": 3})],
		"want": {object.union(_found, {"subject": "J2", "have_count": 3, "need_count": 1})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := two_in_one_joint.report with input as {"joints": tc.given}
	got == tc.want
}
