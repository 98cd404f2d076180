package rules.inspection.not_inspected_within_a_year_test

import data.rules.inspection.not_inspected_within_a_year

# One year between visual inspections: practice, no source.
_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_days": 366, "need_days": 365}

_cases := {
	"one day past": {
		"given": [_hose({"days_since_inspection": 366})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_hose({"days_since_inspection": 365})],
		"want": set(),
	},
	"below": {
		"given": [_hose({"days_since_inspection": 364})],
		"want": set(),
	},
	"date unknown": {
		"given": [_hose({})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"days_since_inspection": 365}), _hose({"days_since_inspection": 366, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"days_since_inspection": 366}), _hose({"days_since_inspection": 366, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := not_inspected_within_a_year.report with input as {"hoses": tc.given}
	got == tc.want
}
