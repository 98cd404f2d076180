package rules.connection.adapter_between_cylinder_outlets_test

import data.rules.connection.adapter_between_cylinder_outlets

# 29 CFR 1910.253(b)(1)(iii), CFR 2015 annual edition (published): outlets to the standard for each gas.
_it(more) := object.union({"id": "A1", "kind": "fitting"}, more)

_found(more) := object.union({"subject": "A1", "part": "A1"}, more)

_law := {"regimes": []}

_cases := {
	"outlets on both sides": {
		"line": _law,
		"given": [_it({})],
		"more": {"joints": [{"id": "J", "a": "cyl", "b": "A1", "cylinder_outlet": true}, {"id": "K", "a": "A1", "b": "R1", "cylinder_outlet": true}]},
		"want": {_found({})},
	},
	"a coupling": {
		"line": _law,
		"given": [_it({"kind": "coupling"})],
		"more": {"joints": [{"id": "J", "a": "cyl", "b": "A1", "cylinder_outlet": true}, {"id": "K", "a": "A1", "b": "R1", "cylinder_outlet": true}]},
		"want": {_found({})},
	},
	"outlet on one side": {
		"line": _law,
		"given": [_it({})],
		"more": {"joints": [{"id": "J", "a": "cyl", "b": "A1", "cylinder_outlet": true}, {"id": "K", "a": "A1", "b": "R1", "cylinder_outlet": false}]},
		"want": set(),
	},
	"no outlet": {
		"line": _law,
		"given": [_it({})],
		"more": {"joints": []},
		"want": set(),
	},
	"a regulator": {
		"line": _law,
		"given": [_it({"kind": "regulator"})],
		"more": {"joints": [{"id": "J", "a": "cyl", "b": "A1", "cylinder_outlet": true}, {"id": "K", "a": "A1", "b": "R1", "cylinder_outlet": true}]},
		"want": set(),
	},
	"the joints of another part": {
		"line": _law,
		"given": [_it({"id": "A2"})],
		"more": {"joints": [{"id": "J", "a": "cyl", "b": "A1", "cylinder_outlet": true}, {"id": "K", "a": "A1", "b": "R1", "cylinder_outlet": true}]},
		"want": set(),
	},
	"both outlets behind it": {
		"line": _law,
		"given": [_it({})],
		"more": {"joints": [{"id": "J", "a": "A1", "b": "x", "cylinder_outlet": true}, {"id": "K", "a": "A1", "b": "R1", "cylinder_outlet": true}]},
		"want": {_found({})},
	},
	"two parts, one adapter": {
		"line": _law,
		"given": [_it({}), _it({"id": "A2"})],
		"more": {"joints": [{"id": "J", "a": "cyl", "b": "A1", "cylinder_outlet": true}, {"id": "K", "a": "A1", "b": "R1", "cylinder_outlet": true}]},
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := adapter_between_cylinder_outlets.report with input as object.union(tc.more, {"line": tc.line, "parts": tc.given})
	got == tc.want
}
