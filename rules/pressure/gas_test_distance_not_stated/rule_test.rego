package rules.pressure.gas_test_distance_not_stated_test

import data.rules.pressure.gas_test_distance_not_stated

# ASME PCC-2:2008 Article 5.1, Appendices II and III (published): 30 m at least.
_it(edits) := object.union(
	{"id": "pad", "fluid": "Nitrogen", "gas": true, "distance_stated": false, "keep_off_mm": 30000},
	edits,
)

_found(edits) := object.union(
	{"subject": "pad", "case": "pressure-test", "keep_off_mm": 30000},
	edits,
)

_cases := {
	"gas without": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"twin, stated": {
		"given": [_it({"distance_stated": true})],
		"want": set(),
	},
	"liquid": {
		"given": [_it({"gas": false})],
		"want": set(),
	},
	"distance asked for unknown": {
		"given": [object.remove(_it({}), ["keep_off_mm"])],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"distance_stated": true}), _it({"id": "vent", "keep_off_mm": 40000})],
		"want": {_found({"subject": "vent", "keep_off_mm": 40000})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := gas_test_distance_not_stated.report with input as {"tests": tc.given}
	got == tc.want
}
