package rules.isolation.unattended_test

import data.rules.isolation.unattended

# 49 CFR 177.834(i)(3), CFR 2015 annual edition (published), for road tankers.
_line(more) := object.union(
	{"regimes": [], "pressurised": true},
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
	"no pressure": {
		"given": _line({"attended": false, "pressurised": false}),
		"want": set(),
	},
	"another law": {
		"given": _line({"attended": false, "regimes": ["ADR"]}),
		"want": {_found},
	},
	"ammonia law, judged elsewhere": {
		"given": _line({"attended": false, "regimes": ["29 CFR 1910.111"]}),
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := unattended.report with input as {"line": tc.given}
	got == tc.want
}
