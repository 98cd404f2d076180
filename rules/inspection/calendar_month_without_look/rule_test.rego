package rules.inspection.calendar_month_without_look_test

import data.rules.inspection.calendar_month_without_look

# 49 CFR 180.416(d)(1), CFR 2015 annual edition (published): once in each calendar month in service.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "inspected_day": 20604}, more)

_law := {"regimes": ["49 CFR 180.416"], "as_of_day": 20635}

_cases := {
	"31 days, a month between": {
		"line": _law,
		"given": [_it({"days_since_inspection": 31})],
		"want": {_found({})},
	},
	"30 days, the month before": {
		"line": _law,
		"given": [_it({"days_since_inspection": 30})],
		"want": set(),
	},
	"in this month": {
		"line": _law,
		"given": [_it({"days_since_inspection": 0})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"61 days in two months": {
		"line": {"regimes": ["49 CFR 180.416"], "as_of_day": 20696},
		"given": [_it({"days_since_inspection": 61})],
		"want": set(),
	},
	"over the new year": {
		"line": {"regimes": ["49 CFR 180.416"], "as_of_day": 20819},
		"given": [_it({"days_since_inspection": 40})],
		"want": {_found({"inspected_day": 20779})},
	},
	"December to January": {
		"line": {"regimes": ["49 CFR 180.416"], "as_of_day": 20819},
		"given": [_it({"days_since_inspection": 31})],
		"want": set(),
	},
	"61 days, three months": {
		"line": {"regimes": ["49 CFR 180.416"], "as_of_day": 20878},
		"given": [_it({"days_since_inspection": 61})],
		"want": {_found({"inspected_day": 20817})},
	},
	"62 days, another rule": {
		"line": {"regimes": ["49 CFR 180.416"], "as_of_day": 20878},
		"given": [_it({"days_since_inspection": 62})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"], "as_of_day": 20635},
		"given": [_it({"days_since_inspection": 31})],
		"want": set(),
	},
	"two, one missed": {
		"line": _law,
		"given": [_it({"days_since_inspection": 1}), _it({"id": "H2", "days_since_inspection": 32})],
		"want": {_found({"subject": "H2", "part": "H2", "inspected_day": 20603})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := calendar_month_without_look.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
