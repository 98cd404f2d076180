package rules.service.air_test_on_flammable_test

import data.rules.service.air_test_on_flammable

# Practice, no source: no air on rests of flammable fluid.
_it(more) := object.union({"id": "air", "name": "Air", "air": true, "role": "test"}, more)

_found(more) := object.union({"subject": "air", "name": "Air"}, more)

_law := {"carries_flammable": true}

_cases := {
	"air": {
		"line": _law,
		"given": [_it({})],
		"want": {_found({})},
	},
	"nitrogen": {
		"line": _law,
		"given": [_it({"air": false})],
		"want": set(),
	},
	"air to blow out is judged elsewhere": {
		"line": _law,
		"given": [_it({"role": "flush"})],
		"want": set(),
	},
	"nothing flammable": {
		"line": {"regimes": [], "carries_flammable": false},
		"given": [_it({})],
		"want": set(),
	},
	"two, one air": {
		"line": _law,
		"given": [_it({"air": false}), _it({"id": "air2"})],
		"want": {_found({"subject": "air2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := air_test_on_flammable.report with input as {"line": tc.line, "fluids": tc.given}
	got == tc.want
}
