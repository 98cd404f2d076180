package rules.relief.set_aside_for_test_test

import data.rules.relief.set_aside_for_test

# What is taken out for a test must be put back (practice, no source).
_it(edits) := object.union(
	{"id": "liquid", "fluid": "Water", "gas": false, "relief_isolated": true, "relief_set_aside": "RV1"},
	edits,
)

_found(edits) := object.union(
	{"subject": "liquid", "run": "liquid", "part": "RV1"},
	edits,
)

_cases := {
	"none at all": {
		"given": [],
		"want": set(),
	},
	"set aside": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"twin, it stays": {
		"given": [_it({"relief_isolated": false, "relief_set_aside": ""})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"relief_isolated": false}), _it({"id": "pad"})],
		"want": {_found({"subject": "pad", "run": "pad"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := set_aside_for_test.report with input as {"tests": tc.given}
	got == tc.want
}
