package rules.inspection.calendar_year_without_test_test

import data.rules.inspection.calendar_year_without_test

# 33 CFR 127.1407, CFR 2015 annual edition (published): once in each calendar year and at most 15 months apart.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "tested_day": 20453}, more)

_law := {"regimes": ["33 CFR 127.1407"], "as_of_day": 20819}

_cases := {
	"366 days, a year between": {
		"line": _law,
		"given": [_it({"days_since_test": 366})],
		"want": {_found({})},
	},
	"365 days, the year before": {
		"line": _law,
		"given": [_it({"days_since_test": 365})],
		"want": set(),
	},
	"today": {
		"line": _law,
		"given": [_it({"days_since_test": 0})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"twelve months and more in two years": {
		"line": {"regimes": ["33 CFR 127.1407"], "as_of_day": 20818},
		"given": [_it({"days_since_test": 450})],
		"want": set(),
	},
	"454 days": {
		"line": {"regimes": ["33 CFR 127.1407"], "as_of_day": 20907},
		"given": [_it({"days_since_test": 454})],
		"want": {_found({"tested_day": 20453})},
	},
	"455 days, another rule": {
		"line": {"regimes": ["33 CFR 127.1407"], "as_of_day": 20908},
		"given": [_it({"days_since_test": 455})],
		"want": set(),
	},
	"under the section on hoses": {
		"line": {"regimes": ["33 CFR 127.1102"], "as_of_day": 20819},
		"given": [_it({"days_since_test": 366})],
		"want": {_found({})},
	},
	"another law": {
		"line": {"regimes": ["ADR"], "as_of_day": 20819},
		"given": [_it({"days_since_test": 366})],
		"want": set(),
	},
	"two, one missed": {
		"line": _law,
		"given": [_it({"days_since_test": 1}), _it({"id": "H2", "days_since_test": 367})],
		"want": {_found({"subject": "H2", "part": "H2", "tested_day": 20452})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := calendar_year_without_test.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
