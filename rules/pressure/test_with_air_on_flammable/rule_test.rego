package rules.pressure.test_with_air_on_flammable_test

import data.rules.pressure.test_with_air_on_flammable

# Practice, no source.
_it(edits) := object.union(
	{"id": "pad", "fluid": "Air", "gas": true, "air_or_oxygen": true, "carries_flammable": true},
	edits,
)

_found(edits) := object.union(
	{"subject": "pad", "case": "pressure-test", "fluid": "Air"},
	edits,
)

_cases := {
	"air on what burns": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"air on what does not": {
		"given": [_it({"carries_flammable": false})],
		"want": set(),
	},
	"twin, nitrogen": {
		"given": [_it({"fluid": "Nitrogen", "air_or_oxygen": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"carries_flammable": false}), _it({"id": "vent"})],
		"want": {_found({"subject": "vent"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_with_air_on_flammable.report with input as {"tests": tc.given}
	got == tc.want
}
