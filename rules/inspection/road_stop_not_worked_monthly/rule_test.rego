package rules.inspection.road_stop_not_worked_monthly_test

import data.rules.inspection.road_stop_not_worked_monthly

# 49 CFR 180.416(d)(3)-(4), CFR 2015 annual edition (published).
_line(more) := object.union({"regimes": ["49 CFR 180.416"]}, more)

_found(days) := {"subject": "line", "have_days": days, "need_days": 61}

_cases := {
	"one past": {"given": _line({"days_since_stop_test": 62}), "want": {_found(62)}},
	"at the limit": {"given": _line({"days_since_stop_test": 61}), "want": set()},
	"below": {"given": _line({"days_since_stop_test": 60}), "want": set()},
	"twin, worked today": {"given": _line({"days_since_stop_test": 0}), "want": set()},
	"unknown": {"given": _line({}), "want": set()},
	"another law": {"given": _line({"days_since_stop_test": 62, "regimes": ["ADR"]}), "want": set()},
	"last of the laws": {
		"given": _line({"days_since_stop_test": 62, "regimes": ["49 CFR 180.416"]}),
		"want": {_found(62)},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := road_stop_not_worked_monthly.report with input as {"line": tc.given}
	got == tc.want
}
