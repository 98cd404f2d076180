package rules.temperature.test_liquid_freezes_test

import data.rules.temperature.test_liquid_freezes

# Water freezes at 273.16 K, its triple point (equation of state, computed).
_it(edits) := object.union(
	{"id": "liquid", "fluid": "Water", "gas": false, "freezes_ck": 27316, "coldest_ck": 27416},
	edits,
)

_found(edits) := object.union(
	{"subject": "liquid", "fluid": "Water", "case": "pressure-test", "have_ck": 27316, "need_ck": 27316},
	edits,
)

_cases := {
	"warm": {
		"given": [_it({})],
		"want": set(),
	},
	"just above": {
		"given": [_it({"coldest_ck": 27317})],
		"want": set(),
	},
	"at": {
		"given": [_it({"coldest_ck": 27316})],
		"want": {_found({})},
	},
	"colder": {
		"given": [_it({"coldest_ck": 27315})],
		"want": {_found({"need_ck": 27315})},
	},
	"freezing point unknown": {
		"given": [object.remove(_it({"coldest_ck": 1}), ["freezes_ck"])],
		"want": set(),
	},
	"how cold is unknown": {
		"given": [object.remove(_it({}), ["coldest_ck"])],
		"want": set(),
	},
	"gas": {
		"given": [_it({"gas": true, "coldest_ck": 27315})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({}), _it({"id": "pad", "coldest_ck": 27316})],
		"want": {_found({"subject": "pad"})},
	},
	"twin, a liquid that freezes lower": {
		"given": [_it({"freezes_ck": 24000, "coldest_ck": 27316})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_liquid_freezes.report with input as {"tests": tc.given}
	got == tc.want
}
