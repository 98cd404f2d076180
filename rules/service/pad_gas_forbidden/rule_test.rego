package rules.service.pad_gas_forbidden_test

import data.rules.service.pad_gas_forbidden

_meeting(more) := object.union(
	{
		"id": "M1",
		"a": "pad",
		"b": "product",
		"where": "pad",
		"why": "It feeds the decomposition.",
	},
	more,
)

_found := {"subject": "M1", "a": "pad", "b": "product", "why": "It feeds the decomposition."}

_cases := {
	"faulty": {
		"given": [_meeting({"forbidden_pad": true, "air_pad": false})],
		"want": {_found},
	},
	"twin, allowed": {
		"given": [_meeting({"forbidden_pad": false, "air_pad": false})],
		"want": set(),
	},
	"air on flammable, judged elsewhere": {
		"given": [_meeting({"forbidden_pad": true, "air_pad": true})],
		"want": set(),
	},
	"met elsewhere": {
		"given": [_meeting({"forbidden_pad": true, "air_pad": false, "where": "flush"})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_meeting({"forbidden_pad": false, "air_pad": false}),
			_meeting({"forbidden_pad": true, "air_pad": false, "id": "M2"}),
		],
		"want": {object.union(_found, {"subject": "M2"})},
	},
	"both of two": {
		"given": [
			_meeting({"forbidden_pad": true, "air_pad": false}),
			_meeting({"forbidden_pad": true, "air_pad": false, "id": "M2"}),
		],
		"want": {_found, object.union(_found, {"subject": "M2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := pad_gas_forbidden.report with input as {"meetings": tc.given}
	got == tc.want
}
