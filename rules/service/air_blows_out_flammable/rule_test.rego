package rules.service.air_blows_out_flammable_test

import data.rules.service.air_blows_out_flammable

# 29 CFR 1910.106(e)(2)(iv)(d) (recalled): transfer of flammable liquid by air pressure prohibited.
_it(more) := object.union({"id": "air", "name": "Air", "air": true, "role": "flush"}, more)

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
	"air as a test fluid is judged elsewhere": {
		"line": _law,
		"given": [_it({"role": "test"})],
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
	got := air_blows_out_flammable.report with input as {"line": tc.line, "fluids": tc.given}
	got == tc.want
}
