package rules.relief.opens_in_test_test

import data.rules.relief.opens_in_test

# A relief device lets go at its set pressure, so the test must stay below it (ASME B31.3 345.3.4, recalled).
_it(edits) := object.union(
	{"id": "RV1 set pressure", "part": "RV1", "what": "relief", "run": "liquid", "rated_kpa": 900, "test_kpa": 900},
	edits,
)

_found(edits) := object.union(
	{"subject": "RV1 set pressure", "part": "RV1", "run": "liquid", "case": "pressure-test", "have_kpa": 900, "need_kpa": 900},
	edits,
)

_cases := {
	"stays shut": {
		"given": [_it({"test_kpa": 899})],
		"want": set(),
	},
	"opens at its set pressure": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"opens below the test": {
		"given": [_it({"test_kpa": 901})],
		"want": {_found({"need_kpa": 901})},
	},
	"set pressure unknown": {
		"given": [object.remove(_it({}), ["rated_kpa"])],
		"want": set(),
	},
	"test unknown": {
		"given": [object.remove(_it({}), ["test_kpa"])],
		"want": set(),
	},
	"another part": {
		"given": [_it({"what": "body", "test_kpa": 901})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"test_kpa": 899}), _it({"id": "RV2 set pressure", "part": "RV2"})],
		"want": {_found({"subject": "RV2 set pressure", "part": "RV2"})},
	},
	"twin, set higher": {
		"given": [_it({"rated_kpa": 901})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := opens_in_test.report with input as {"test_items": tc.given}
	got == tc.want
}
