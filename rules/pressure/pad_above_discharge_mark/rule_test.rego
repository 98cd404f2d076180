package rules.pressure.pad_above_discharge_mark_test

import data.rules.pressure.pad_above_discharge_mark

# 49 CFR 178.703: the greatest discharge pressure is marked in kPa (recalled).
_vessel(more) := object.union(
	{
		"id": "tanker",
		"is_source": true,
		"is_target": false,
		"closed": true,
		"padded": true,
		"holds_flammable": false,
		"holds_chlorine": false,
		"holds_liquid": true,
		"has_relief": false,
		"quantity_stated": false,
	},
	more,
)

_found := {"subject": "tanker", "part": "tanker", "have_kpa": 200, "need_kpa": 201}

_cases := {
	"one past the mark": {
		"given": [_vessel({"pad_kpa": 201, "discharge_limit_kpa": 200})],
		"want": {_found},
	},
	"twin, at the mark": {
		"given": [_vessel({"pad_kpa": 200, "discharge_limit_kpa": 200})],
		"want": set(),
	},
	"below": {
		"given": [_vessel({"pad_kpa": 199, "discharge_limit_kpa": 200})],
		"want": set(),
	},
	"marked for nothing": {
		"given": [_vessel({"pad_kpa": 1, "discharge_limit_kpa": 0})],
		"want": {object.union(_found, {"have_kpa": 0, "need_kpa": 1})},
	},
	"pad unknown": {
		"given": [_vessel({"discharge_limit_kpa": 200})],
		"want": set(),
	},
	"mark unknown, which another rule says": {
		"given": [_vessel({"pad_kpa": 201, "kind": "ibc"})],
		"want": set(),
	},
	"not padded": {
		"given": [_vessel({"pad_kpa": 201, "discharge_limit_kpa": 200, "padded": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_vessel({"pad_kpa": 200, "discharge_limit_kpa": 200}),
			_vessel({"pad_kpa": 201, "discharge_limit_kpa": 200, "id": "ibc"}),
		],
		"want": {object.union(_found, {"subject": "ibc", "part": "ibc"})},
	},
	"both of two": {
		"given": [
			_vessel({"pad_kpa": 201, "discharge_limit_kpa": 200}),
			_vessel({"pad_kpa": 201, "discharge_limit_kpa": 200, "id": "ibc"}),
		],
		"want": {_found, object.union(_found, {"subject": "ibc", "part": "ibc"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := pad_above_discharge_mark.report with input as {"vessels": tc.given}
	got == tc.want
}
