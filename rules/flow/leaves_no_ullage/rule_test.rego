package rules.flow.leaves_no_ullage_test

import data.rules.flow.leaves_no_ullage

# 95 % is common practice, without a source.
_vessel(more) := object.union(
	{
		"id": "tank",
		"is_source": false,
		"is_target": true,
		"closed": true,
		"padded": false,
		"holds_flammable": false,
		"holds_chlorine": false,
		"holds_liquid": true,
		"has_relief": false,
		"quantity_stated": true,
	},
	more,
)

_found := {"subject": "tank", "part": "tank", "have_permille": 951, "need_permille": 950}

_cases := {
	"one past": {
		"given": [_vessel({"after_permille": 951})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_vessel({"after_permille": 950})],
		"want": set(),
	},
	"below": {
		"given": [_vessel({"after_permille": 949})],
		"want": set(),
	},
	"just full": {
		"given": [_vessel({"after_permille": 1000})],
		"want": {object.union(_found, {"have_permille": 1000})},
	},
	"more than full": {
		"given": [_vessel({"after_permille": 1001})],
		"want": set(),
	},
	"level unknown": {
		"given": [_vessel({})],
		"want": set(),
	},
	"no quantity planned": {
		"given": [_vessel({"after_permille": 951, "quantity_stated": false})],
		"want": set(),
	},
	"source": {
		"given": [_vessel({"after_permille": 951, "is_target": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_vessel({"after_permille": 800}), _vessel({"after_permille": 951, "id": "drum"})],
		"want": {object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"both of two": {
		"given": [_vessel({"after_permille": 951}), _vessel({"after_permille": 951, "id": "drum"})],
		"want": {_found, object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := leaves_no_ullage.report with input as {"vessels": tc.given}
	got == tc.want
}
