package rules.service.oxygen_low_in_room_test

import data.rules.service.oxygen_low_in_room

# 29 CFR 1910.146(b) (restated): under 19.5 % is oxygen deficient. One 50 L cylinder of nitrogen at 200 bar let
# into 100 m3 leaves 19.0 % (computed).
_release(more) := object.union({"id": "nitrogen", "asphyxiant": true, "restrained": true}, more)

_found := {"subject": "nitrogen", "run": "nitrogen", "have_permille": 190, "need_permille": 195}

_cases := {
	"one cylinder in 100 m3": {
		"given": [_release({"oxygen_permille": 190})],
		"want": {_found},
	},
	"one under": {
		"given": [_release({"oxygen_permille": 194})],
		"want": {object.union(_found, {"have_permille": 194})},
	},
	"at the limit": {
		"given": [_release({"oxygen_permille": 195})],
		"want": set(),
	},
	"above": {
		"given": [_release({"oxygen_permille": 196})],
		"want": set(),
	},
	"lowest that this rule judges": {
		"given": [_release({"oxygen_permille": 180})],
		"want": {object.union(_found, {"have_permille": 180})},
	},
	"less still": {
		"given": [_release({"oxygen_permille": 179})],
		"want": set(),
	},
	"twin, one cylinder in 200 m3": {
		"given": [_release({"oxygen_permille": 199})],
		"want": set(),
	},
	"unknown": {
		"given": [_release({})],
		"want": set(),
	},
	"in the open, or air": {
		"given": [_release({"oxygen_permille": 190, "asphyxiant": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_release({"oxygen_permille": 199}), _release({"oxygen_permille": 190, "id": "argon"})],
		"want": {object.union(_found, {"subject": "argon", "run": "argon"})},
	},
	"both of two": {
		"given": [_release({"oxygen_permille": 190}), _release({"oxygen_permille": 190, "id": "argon"})],
		"want": {_found, object.union(_found, {"subject": "argon", "run": "argon"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := oxygen_low_in_room.report with input as {"releases": tc.given}
	got == tc.want
}
