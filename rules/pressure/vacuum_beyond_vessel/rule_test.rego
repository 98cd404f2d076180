package rules.pressure.vacuum_beyond_vessel_test

import data.rules.pressure.vacuum_beyond_vessel

# Common practice, no source.
_it(edits) := object.union(
	{"id": "tank", "vacuum_likely": true, "vacuum_cause": "steam that condenses in it", "vacuum_have_kpa": 80, "vacuum_need_kpa": 80},
	edits,
)

_found(edits) := object.union(
	{"subject": "tank", "part": "tank", "cause": "steam that condenses in it", "have_kpa": 79, "need_kpa": 80},
	edits,
)

_cases := {
	"spare": {
		"given": [_it({"vacuum_have_kpa": 90})],
		"want": set(),
	},
	"exactly equal": {
		"given": [_it({})],
		"want": set(),
	},
	"one short": {
		"given": [_it({"vacuum_have_kpa": 79})],
		"want": {_found({})},
	},
	"what it stands is unknown": {
		"given": [object.remove(_it({}), ["vacuum_have_kpa"])],
		"want": set(),
	},
	"what pulls is unknown": {
		"given": [object.remove(_it({"vacuum_have_kpa": 0}), ["vacuum_need_kpa"])],
		"want": set(),
	},
	"nothing pulls": {
		"given": [_it({"vacuum_likely": false, "vacuum_have_kpa": 0})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({}), _it({"id": "drum", "vacuum_have_kpa": 0})],
		"want": {_found({"subject": "drum", "part": "drum", "have_kpa": 0})},
	},
	"twin, a vacuum breaker": {
		"given": [_it({"vacuum_have_kpa": 5, "vacuum_need_kpa": 5})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := vacuum_beyond_vessel.report with input as {"vessels": tc.given}
	got == tc.want
}
