package rules.flow.overfills_receiver_test

import data.rules.flow.overfills_receiver

# Arithmetic: a vessel holds its own volume and no more.
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

_found := {"subject": "tank", "part": "tank", "have_permille": 1001, "need_permille": 1000}

_cases := {
	"one past full": {
		"given": [_vessel({"after_permille": 1001})],
		"want": {_found},
	},
	"just full, the matter of another rule": {
		"given": [_vessel({"after_permille": 1000})],
		"want": set(),
	},
	"below": {
		"given": [_vessel({"after_permille": 999})],
		"want": set(),
	},
	"twin, less delivered": {
		"given": [_vessel({"after_permille": 800})],
		"want": set(),
	},
	"level unknown": {
		"given": [_vessel({})],
		"want": set(),
	},
	"no quantity planned": {
		"given": [_vessel({"after_permille": 1001, "quantity_stated": false})],
		"want": set(),
	},
	"source": {
		"given": [_vessel({"after_permille": 1001, "is_target": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_vessel({"after_permille": 800}), _vessel({"after_permille": 1001, "id": "drum"})],
		"want": {object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"both of two": {
		"given": [_vessel({"after_permille": 1001}), _vessel({"after_permille": 1001, "id": "drum"})],
		"want": {_found, object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := overfills_receiver.report with input as {"vessels": tc.given}
	got == tc.want
}
