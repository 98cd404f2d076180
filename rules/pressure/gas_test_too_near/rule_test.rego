package rules.pressure.gas_test_too_near_test

import data.rules.pressure.gas_test_too_near

# ASME PCC-2:2008 Article 5.1, Appendices II and III (published): 30 m at least.
_it(edits) := object.union(
	{"id": "pad", "fluid": "Nitrogen", "gas": true, "distance_stated": true, "keep_off_mm": 30000, "distance_mm": 30000},
	edits,
)

_found(edits) := object.union(
	{"subject": "pad", "case": "pressure-test", "have_mm": 29999, "need_mm": 30000},
	edits,
)

_cases := {
	"further": {
		"given": [_it({"distance_mm": 30001})],
		"want": set(),
	},
	"at": {
		"given": [_it({})],
		"want": set(),
	},
	"one short": {
		"given": [_it({"distance_mm": 29999})],
		"want": {_found({})},
	},
	"distance kept unknown": {
		"given": [object.remove(_it({}), ["distance_mm"])],
		"want": set(),
	},
	"distance asked for unknown": {
		"given": [object.remove(_it({"distance_mm": 1}), ["keep_off_mm"])],
		"want": set(),
	},
	"liquid": {
		"given": [_it({"gas": false, "distance_mm": 1})],
		"want": set(),
	},
	"not stated": {
		"given": [_it({"distance_stated": false, "distance_mm": 1})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({}), _it({"id": "vent", "distance_mm": 29999})],
		"want": {_found({"subject": "vent"})},
	},
	"twin, less gas": {
		"given": [_it({"distance_mm": 29999, "keep_off_mm": 29999})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := gas_test_too_near.report with input as {"tests": tc.given}
	got == tc.want
}
