package rules.inspection.monthly_inspection_missed_test

import data.rules.inspection.monthly_inspection_missed

# 49 CFR 180.416(d)(1), CFR 2015 annual edition (published): once in each calendar month in service.
_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_days": 62, "need_days": 61}

_cases := {
	"one day past": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"days_since_inspection": 62})],
		"want": {_found},
	},
	"twin, at the limit": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"days_since_inspection": 61})],
		"want": set(),
	},
	"below": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"days_since_inspection": 60})],
		"want": set(),
	},
	"date unknown": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({})],
		"want": set(),
	},
	"other law": {
		"line": {"regimes": []},
		"given": [_hose({"days_since_inspection": 62})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"days_since_inspection": 61}), _hose({"days_since_inspection": 62, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"days_since_inspection": 62}), _hose({"days_since_inspection": 62, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := monthly_inspection_missed.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
