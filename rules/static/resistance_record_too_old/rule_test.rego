package rules.static.resistance_record_too_old_test

import data.rules.static.resistance_record_too_old

# One year between measurements: practice, no source.
_hose(more) := object.union(
	{"id": "H1", "carries_flammable": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_days": 366, "need_days": 365}

_cases := {
	"one day past": {
		"given": [_hose({"days_since_resistance_test": 366})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_hose({"days_since_resistance_test": 365})],
		"want": set(),
	},
	"below": {
		"given": [_hose({"days_since_resistance_test": 364})],
		"want": set(),
	},
	"date unknown": {
		"given": [_hose({})],
		"want": set(),
	},
	"nothing flammable": {
		"given": [_hose({"days_since_resistance_test": 366, "carries_flammable": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_hose({"days_since_resistance_test": 365}),
			_hose({"days_since_resistance_test": 366, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [
			_hose({"days_since_resistance_test": 366}),
			_hose({"days_since_resistance_test": 366, "id": "H2"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := resistance_record_too_old.report with input as {"hoses": tc.given}
	got == tc.want
}
