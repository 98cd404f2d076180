package rules.service.oxygen_not_clean_test

import data.rules.service.oxygen_not_clean

# 29 CFR 1910.104(b)(8)(i), CFR 2015 annual edition (published).
_part(more) := object.union(
	{"id": "P1", "kind": "valve", "carries_oxygen": true},
	more,
)

_found := {"subject": "P1", "part": "P1"}

_cases := {
	"faulty": {
		"given": [_part({"oxygen_clean": false})],
		"want": {_found},
	},
	"twin, cleaned": {
		"given": [_part({"oxygen_clean": true})],
		"want": set(),
	},
	"unknown": {
		"given": [_part({})],
		"want": set(),
	},
	"no oxygen": {
		"given": [_part({"oxygen_clean": false, "carries_oxygen": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_part({"oxygen_clean": true}), _part({"oxygen_clean": false, "id": "P2"})],
		"want": {object.union(_found, {"subject": "P2", "part": "P2"})},
	},
	"both of two": {
		"given": [_part({"oxygen_clean": false}), _part({"oxygen_clean": false, "id": "P2"})],
		"want": {_found, object.union(_found, {"subject": "P2", "part": "P2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := oxygen_not_clean.report with input as {"parts": tc.given}
	got == tc.want
}
