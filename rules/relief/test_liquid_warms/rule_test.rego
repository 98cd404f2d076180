package rules.relief.test_liquid_warms_test

import data.rules.relief.test_liquid_warms

# Shut-in liquid: API Std 521 5.14.4 (published); a test that stands must be kept from it: ASME B31.3 345.2.1 (recalled).
_it(edits) := object.union(
	{"id": "liquid", "gas": false, "relief_stated": false, "test_kpa": 1200, "warmed_kpa": 1200},
	edits,
)

_found(edits) := object.union(
	{"subject": "liquid", "case": "pressure-test", "have_kpa": 1200, "need_kpa": 1201},
	edits,
)

_cases := {
	"it does not warm": {"given": [_it({})], "want": set()},
	"it cools": {"given": [_it({"warmed_kpa": 1199})], "want": set()},
	"it warms": {"given": [_it({"warmed_kpa": 1201})], "want": {_found({})}},
	"how far is unknown": {"given": [object.remove(_it({}), ["warmed_kpa"])], "want": set()},
	"test unknown": {"given": [object.remove(_it({}), ["test_kpa"])], "want": set()},
	"gas": {"given": [_it({"gas": true, "warmed_kpa": 1201})], "want": set()},
	"twin, a relief device": {"given": [_it({"relief_stated": true, "warmed_kpa": 1201})], "want": set()},
	"the second of two": {
		"given": [_it({}), _it({"id": "pad", "warmed_kpa": 1201})],
		"want": {_found({"subject": "pad"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_liquid_warms.report with input as {"tests": tc.given}
	got == tc.want
}
