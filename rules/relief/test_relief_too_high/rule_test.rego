package rules.relief.test_relief_too_high_test

import data.rules.relief.test_relief_too_high

# The lesser of 345 kPa and a tenth with gas: ASME B31.3 345.5.2 (recalled); a third with liquid (practice).
_it(edits) := object.union(
	{"id": "pad", "fluid": "Nitrogen", "gas": true, "relief_stated": true, "test_kpa": 1000, "relief_over_kpa": 100},
	edits,
)

_found(edits) := object.union(
	{"subject": "pad", "case": "pressure-test", "over_kpa": 101},
	edits,
)

_cases := {
	"below": {"given": [_it({"relief_over_kpa": 99})], "want": set()},
	"at a tenth": {"given": [_it({})], "want": set()},
	"one past a tenth": {"given": [_it({"relief_over_kpa": 101})], "want": {_found({})}},
	"at 345 kPa": {"given": [_it({"test_kpa": 5000, "relief_over_kpa": 345})], "want": set()},
	"one past 345 kPa": {
		"given": [_it({"test_kpa": 5000, "relief_over_kpa": 346})],
		"want": {_found({"over_kpa": 346})},
	},
	"liquid at a third": {"given": [_it({"gas": false, "test_kpa": 1200, "relief_over_kpa": 400})], "want": set()},
	"liquid one past a third": {
		"given": [_it({"gas": false, "test_kpa": 1200, "relief_over_kpa": 401})],
		"want": {_found({"over_kpa": 401})},
	},
	"set pressure unknown": {"given": [object.remove(_it({}), ["relief_over_kpa"])], "want": set()},
	"test unknown": {"given": [object.remove(_it({"relief_over_kpa": 200}), ["test_kpa"])], "want": set()},
	"none stated": {"given": [_it({"relief_stated": false, "relief_over_kpa": 9999})], "want": set()},
	"the second of two": {
		"given": [_it({}), _it({"id": "vent", "relief_over_kpa": 101})],
		"want": {_found({"subject": "vent"})},
	},
	"twin, a lower set pressure": {"given": [_it({"relief_over_kpa": 0})], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := test_relief_too_high.report with input as {"tests": tc.given}
	got == tc.want
}
