package rules.pressure.discharge_mark_not_stated_test

import data.rules.pressure.discharge_mark_not_stated

# 49 CFR 178.703: the greatest discharge pressure is marked in kPa (recalled).
_vessel(more) := object.union(
	{
		"id": "bulk",
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

_found := {"subject": "bulk", "part": "bulk"}

_cases := {
	"mark not stated": {
		"given": [_vessel({"pad_kpa": 50, "kind": "ibc"})],
		"want": {_found},
	},
	"a tote": {
		"given": [_vessel({"pad_kpa": 50, "kind": "tote"})],
		"want": {_found},
	},
	"twin, stated": {
		"given": [_vessel({"pad_kpa": 50, "kind": "ibc", "discharge_limit_kpa": 100})],
		"want": set(),
	},
	"stated as zero": {
		"given": [_vessel({"pad_kpa": 50, "kind": "ibc", "discharge_limit_kpa": 0})],
		"want": set(),
	},
	"pad unknown": {
		"given": [_vessel({"kind": "ibc"})],
		"want": {_found},
	},
	"a pressure vessel": {
		"given": [_vessel({"pad_kpa": 50, "kind": "pressure-vessel"})],
		"want": set(),
	},
	"kind unknown": {
		"given": [_vessel({"pad_kpa": 50})],
		"want": set(),
	},
	"not padded": {
		"given": [_vessel({"kind": "ibc", "padded": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_vessel({"kind": "ibc", "discharge_limit_kpa": 100}), _vessel({"kind": "ibc", "id": "second"})],
		"want": {object.union(_found, {"subject": "second", "part": "second"})},
	},
	"both of two": {
		"given": [_vessel({"kind": "ibc"}), _vessel({"kind": "ibc", "id": "second"})],
		"want": {_found, object.union(_found, {"subject": "second", "part": "second"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := discharge_mark_not_stated.report with input as {"vessels": tc.given}
	got == tc.want
}
