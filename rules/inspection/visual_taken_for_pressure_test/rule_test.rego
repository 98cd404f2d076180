package rules.inspection.visual_taken_for_pressure_test_test

import data.rules.inspection.visual_taken_for_pressure_test

# Practice, no source.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_cases := {
	"a look": {
		"given": [_it({"test_kind": "visual"})],
		"want": {_found({})},
	},
	"twin, hydrostatic": {
		"given": [_it({"test_kind": "hydrostatic"})],
		"want": set(),
	},
	"with gas": {
		"given": [_it({"test_kind": "pneumatic"})],
		"want": set(),
	},
	"leak test": {
		"given": [_it({"test_kind": "leak"})],
		"want": set(),
	},
	"unknown": {
		"given": [_it({})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"test_kind": "leak"}), _it({"id": "H2", "test_kind": "visual"})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := visual_taken_for_pressure_test.report with input as {"hoses": tc.given}
	got == tc.want
}
