package rules.seal.missing_test

import data.rules.seal.missing

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"no seal": {"given": [_joint({"needs_seal": true, "seal_count": 0})], "want": {_found}},
	"twin, one seal": {"given": [_joint({"needs_seal": true, "seal_count": 1})], "want": set()},
	"two seals are another rule": {"given": [_joint({"needs_seal": true, "seal_count": 2})], "want": set()},
	"metal seat needs no seal": {"given": [_joint({"needs_seal": false, "seal_count": 0})], "want": set()},
	"seal not stated": {"given": [_joint({"needs_seal": true})], "want": set()},
	"need not known": {"given": [_joint({"seal_count": 0})], "want": set()},
	"open hatch, not a joint": {
		"given": [_joint({"needs_seal": true, "seal_count": 0, "open_point": true})],
		"want": set(),
	},
	"second of two joints": {
		"given": [
			_joint({"needs_seal": true, "seal_count": 1}),
			_joint({"id": "J2", "needs_seal": true, "seal_count": 0}),
		],
		"want": {object.union(_found, {"subject": "J2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := missing.report with input as {"joints": tc.given}
	got == tc.want
}
