package rules.material.test_liquid_left_in_dry_line_test

import data.rules.material.test_liquid_left_in_dry_line

# Practice, no source.
_it(edits) := object.union(
	{"id": "liquid", "fluid": "Water", "gas": false, "dried": false, "must_be_dry": true, "must_be_dry_for": "Propane"},
	edits,
)

_found(edits) := object.union(
	{"subject": "liquid", "fluid": "Water", "dry": "Propane"},
	edits,
)

_cases := {
	"wet": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"twin, dried": {
		"given": [_it({"dried": true})],
		"want": set(),
	},
	"need not be dry": {
		"given": [_it({"must_be_dry": false, "must_be_dry_for": ""})],
		"want": set(),
	},
	"gas": {
		"given": [_it({"gas": true})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"dried": true}), _it({"id": "pad"})],
		"want": {_found({"subject": "pad"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_liquid_left_in_dry_line.report with input as {"tests": tc.given}
	got == tc.want
}
