package rules.seal.size_differs_test

import data.rules.seal.size_differs

_seal(more) := object.union({"id": "J1.seal", "joint": "J1"}, more)

_found := {"subject": "J1.seal", "joint": "J1"}

_cases := {
	"wrong size": {"given": [_seal({"size": "differs"})], "want": {_found}},
	"twin, right size": {"given": [_seal({"size": "same"})], "want": set()},
	"size not known": {"given": [_seal({})], "want": set()},
	"seal that goes by its joint": {"given": [_seal({"size": "none"})], "want": set()},
	"no seals": {"given": [], "want": set()},
	"two seals": {
		"given": [
			_seal({"size": "differs"}),
			_seal({"id": "J2.seal", "joint": "J2", "size": "differs"}),
		],
		"want": {_found, {"subject": "J2.seal", "joint": "J2"}},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := size_differs.report with input as {"seals": tc.given}
	got == tc.want
}
