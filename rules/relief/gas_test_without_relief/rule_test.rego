package rules.relief.gas_test_without_relief_test

import data.rules.relief.gas_test_without_relief

# A test with gas has a relief device: ASME B31.3 345.5.2 (recalled).
_it(edits) := object.union(
	{"id": "pad", "fluid": "Nitrogen", "gas": true, "relief_stated": false},
	edits,
)

_found(edits) := object.union(
	{"subject": "pad", "fluid": "Nitrogen", "case": "pressure-test"},
	edits,
)

_cases := {
	"gas without": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"twin, gas with one": {
		"given": [_it({"relief_stated": true})],
		"want": set(),
	},
	"liquid without": {
		"given": [_it({"gas": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"relief_stated": true}), _it({"id": "vent"})],
		"want": {_found({"subject": "vent"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := gas_test_without_relief.report with input as {"tests": tc.given}
	got == tc.want
}
