package rules.service.oxygen_depletion_in_room_test

import data.rules.service.oxygen_depletion_in_room

# One 50 L cylinder of nitrogen at 200 bar let into 36 m3 leaves 15.4 %, into 100 m3 19.0 % (computed); 18 % is
# the second alarm of UK university guidance (published).
_release(more) := object.union({"id": "nitrogen", "asphyxiant": true, "restrained": true}, more)

_found := {"subject": "nitrogen", "run": "nitrogen", "have_permille": 154, "need_permille": 180}

_cases := {
	"one cylinder in 36 m3": {
		"given": [_release({"oxygen_permille": 154})],
		"want": {_found},
	},
	"one under": {
		"given": [_release({"oxygen_permille": 179})],
		"want": {object.union(_found, {"have_permille": 179})},
	},
	"at the limit": {
		"given": [_release({"oxygen_permille": 180})],
		"want": set(),
	},
	"above": {
		"given": [_release({"oxygen_permille": 181})],
		"want": set(),
	},
	"twin, one cylinder in 100 m3": {
		"given": [_release({"oxygen_permille": 190})],
		"want": set(),
	},
	"unknown": {
		"given": [_release({})],
		"want": set(),
	},
	"in the open, or air": {
		"given": [_release({"oxygen_permille": 154, "asphyxiant": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_release({"oxygen_permille": 190}), _release({"oxygen_permille": 154, "id": "argon"})],
		"want": {object.union(_found, {"subject": "argon", "run": "argon"})},
	},
	"both of two": {
		"given": [_release({"oxygen_permille": 154}), _release({"oxygen_permille": 154, "id": "argon"})],
		"want": {_found, object.union(_found, {"subject": "argon", "run": "argon"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := oxygen_depletion_in_room.report with input as {"releases": tc.given}
	got == tc.want
}
