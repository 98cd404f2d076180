package rules.isolation.ammonia_transfer_unattended_test

import data.rules.isolation.ammonia_transfer_unattended

# 29 CFR 1910.111(b)(12)(ii), CFR 2015 annual edition (published).
_line(more) := object.union(
	{"regimes": ["29 CFR 1910.111"]},
	more,
)

_found := {"subject": "line"}

_cases := {
	"faulty": {
		"given": _line({"attended": false}),
		"want": {_found},
	},
	"twin, attended": {
		"given": _line({"attended": true}),
		"want": set(),
	},
	"unknown": {
		"given": _line({}),
		"want": set(),
	},
	"other law": {
		"given": _line({"attended": false, "regimes": []}),
		"want": set(),
	},
	"one law of two": {
		"given": _line({"attended": false, "regimes": ["ADR", "29 CFR 1910.111"]}),
		"want": {_found},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_transfer_unattended.report with input as {"line": tc.given}
	got == tc.want
}
