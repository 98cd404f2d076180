package rules.service.air_pad_on_flammable_test

import data.rules.service.air_pad_on_flammable

# 29 CFR 1910.106(e)(2)(iv)(d): recalled.
_meeting(more) := object.union(
	{"id": "M1", "a": "pad", "b": "product", "where": "pad"},
	more,
)

_found := {"subject": "M1", "a": "pad", "b": "product"}

_cases := {
	"faulty": {
		"given": [_meeting({"air_pad": true})],
		"want": {_found},
	},
	"twin, inert gas": {
		"given": [_meeting({"air_pad": false})],
		"want": set(),
	},
	"met elsewhere": {
		"given": [_meeting({"air_pad": true, "where": "flush"})],
		"want": set(),
	},
	"the second of two": {
		"given": [_meeting({"air_pad": false}), _meeting({"air_pad": true, "id": "M2"})],
		"want": {object.union(_found, {"subject": "M2"})},
	},
	"both of two": {
		"given": [_meeting({"air_pad": true}), _meeting({"air_pad": true, "id": "M2"})],
		"want": {_found, object.union(_found, {"subject": "M2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := air_pad_on_flammable.report with input as {"meetings": tc.given}
	got == tc.want
}
