package rules.seal.kind_does_not_fit_test

import data.rules.seal.kind_does_not_fit

_seal(more) := object.union({"id": "J1.seal", "joint": "J1"}, more)

_found := {"subject": "J1.seal", "joint": "J1"}

_cases := {
	"flat washer in a groove": {
		"given": [_seal({"kind": "flat", "kind_fits": false})],
		"want": {object.union(_found, {"kind": "flat"})},
	},
	"twin, ring in its groove": {"given": [_seal({"kind": "o-ring", "kind_fits": true})], "want": set()},
	"not known whether it fits": {"given": [_seal({"kind": "flat"})], "want": set()},
	"kind not known": {"given": [_seal({})], "want": set()},
	"no seals": {"given": [], "want": set()},
	"second of two seals": {
		"given": [
			_seal({"kind": "flat", "kind_fits": true}),
			_seal({
				"id": "J2.seal",
				"joint": "J2",
				"kind": "flat",
				"kind_fits": false,
			}),
		],
		"want": {{"subject": "J2.seal", "joint": "J2", "kind": "flat"}},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := kind_does_not_fit.report with input as {"seals": tc.given}
	got == tc.want
}
