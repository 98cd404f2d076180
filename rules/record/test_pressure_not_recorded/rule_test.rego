package rules.record.test_pressure_not_recorded_test

import data.rules.record.test_pressure_not_recorded

# 29 CFR 1910.119(j)(4)(iv) and 40 CFR 68.73(d)(4), CFR 2015 annual edition (published): description and result
# belong to the record.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_law := {"regimes": ["29 CFR 1910.119"]}

_cases := {
	"date without pressure": {
		"line": _law,
		"given": [_it({"days_since_test": 90})],
		"want": {_found({})},
	},
	"tested today": {
		"line": _law,
		"given": [_it({"days_since_test": 0})],
		"want": {_found({})},
	},
	"date with pressure": {
		"line": _law,
		"given": [_it({"days_since_test": 90, "test_pressure_kpa": 1500})],
		"want": set(),
	},
	"a date to come is judged elsewhere": {
		"line": _law,
		"given": [_it({"days_since_test": -1})],
		"want": set(),
	},
	"no test at all is judged elsewhere": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"days_since_test": 90})],
		"want": set(),
	},
	"under 33 CFR 156.170": {
		"line": {"regimes": ["ADR", "33 CFR 156.170"]},
		"given": [_it({"days_since_test": 90})],
		"want": {_found({})},
	},
	"under 40 CFR 68.73": {
		"line": {"regimes": ["ADR", "40 CFR 68.73"]},
		"given": [_it({"days_since_test": 90})],
		"want": {_found({})},
	},
	"under 46 CFR 151.04-5": {
		"line": {"regimes": ["ADR", "46 CFR 151.04-5"]},
		"given": [_it({"days_since_test": 90})],
		"want": {_found({})},
	},
	"two, one recorded": {
		"line": _law,
		"given": [_it({"days_since_test": 90, "test_pressure_kpa": 1000}), _it({"id": "H2", "days_since_test": 9})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_pressure_not_recorded.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
