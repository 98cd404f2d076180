package rules.temperature.cool_after_steam_test

import data.rules.temperature.cool_after_steam

# Practice, no source.
_it(edits) := object.union(
	{"id": "steam in main", "run": "main", "cleaning": true},
	edits,
)

_found(edits) := object.union(
	{"subject": "steam in main", "run": "main"},
	edits,
)

_cases := {
	"none at all": {
		"given": [],
		"want": set(),
	},
	"steamed out": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"twin, a line for steam": {
		"given": [_it({"cleaning": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"cleaning": false}), _it({"id": "steam in other", "run": "other"})],
		"want": {_found({"subject": "steam in other", "run": "other"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := cool_after_steam.report with input as {"steams": tc.given}
	got == tc.want
}
