package rules.inspection.waterfront_stop_test_overdue_test

import data.rules.inspection.waterfront_stop_test_overdue

# 33 CFR 127.1407, CFR 2015 annual edition (published).
_line(more) := object.union({"regimes": ["33 CFR 127.1407"]}, more)

_found(days) := {"subject": "line", "have_days": days, "need_days": 62}

_cases := {
	"one past": {"given": _line({"days_since_stop_test": 63}), "want": {_found(63)}},
	"at the limit": {"given": _line({"days_since_stop_test": 62}), "want": set()},
	"below": {"given": _line({"days_since_stop_test": 61}), "want": set()},
	"twin, worked today": {"given": _line({"days_since_stop_test": 0}), "want": set()},
	"unknown": {"given": _line({}), "want": set()},
	"another law": {"given": _line({"days_since_stop_test": 63, "regimes": ["ADR"]}), "want": set()},
	"last of the laws": {
		"given": _line({"days_since_stop_test": 63, "regimes": ["33 CFR 127.1102"]}),
		"want": {_found(63)},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := waterfront_stop_test_overdue.report with input as {"line": tc.given}
	got == tc.want
}
