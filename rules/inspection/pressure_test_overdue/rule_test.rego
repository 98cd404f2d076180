package rules.inspection.pressure_test_overdue_test

import data.rules.inspection.pressure_test_overdue

_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_days": 366, "need_days": 365}

_cases := {
	"one day past": {
		"given": [_hose({"days_since_test": 366, "test_interval_days": 365})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_hose({"days_since_test": 365, "test_interval_days": 365})],
		"want": set(),
	},
	"below": {
		"given": [_hose({"days_since_test": 364, "test_interval_days": 365})],
		"want": set(),
	},
	"a shorter interval": {
		"given": [_hose({"days_since_test": 181, "test_interval_days": 180})],
		"want": {object.union(_found, {"have_days": 181, "need_days": 180})},
	},
	"date unknown": {
		"given": [_hose({"test_interval_days": 365})],
		"want": set(),
	},
	"interval unknown": {
		"given": [_hose({"days_since_test": 366})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_hose({"days_since_test": 365, "test_interval_days": 365}),
			_hose({"days_since_test": 366, "test_interval_days": 365, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [
			_hose({"days_since_test": 366, "test_interval_days": 365}),
			_hose({"days_since_test": 366, "test_interval_days": 365, "id": "H2"}),
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
	got := pressure_test_overdue.report with input as {"hoses": tc.given}
	got == tc.want
}
