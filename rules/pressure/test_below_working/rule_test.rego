package rules.pressure.test_below_working_test

import data.rules.pressure.test_below_working

# ASME B31.3 345.4.2 and 345.5.4 (recalled) ask for more than the design pressure.
_it(edits) := object.union(
	{"id": "liquid", "fluid": "Water", "gas": false, "test_kpa": 1000, "working_kpa": 1000},
	edits,
)

_found(edits) := object.union(
	{"subject": "liquid", "case": "pressure-test", "have_kpa": 999, "need_kpa": 1000},
	edits,
)

_cases := {
	"above": {
		"given": [_it({"test_kpa": 1001})],
		"want": set(),
	},
	"at": {
		"given": [_it({})],
		"want": set(),
	},
	"one short": {
		"given": [_it({"test_kpa": 999})],
		"want": {_found({})},
	},
	"test unknown": {
		"given": [object.remove(_it({}), ["test_kpa"])],
		"want": set(),
	},
	"use unknown": {
		"given": [object.remove(_it({"test_kpa": 1}), ["working_kpa"])],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({}), _it({"id": "pad", "test_kpa": 999})],
		"want": {_found({"subject": "pad"})},
	},
	"twin, less in use": {
		"given": [_it({"test_kpa": 999, "working_kpa": 999})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_below_working.report with input as {"tests": tc.given}
	got == tc.want
}
