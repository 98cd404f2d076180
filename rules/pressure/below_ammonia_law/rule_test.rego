package rules.pressure.below_ammonia_law_test

import data.rules.pressure.below_ammonia_law

# 29 CFR 1910.111(b)(8)(ii), CFR 2015 annual edition (published): at least 350 psig = 2413.1 kPa.
_hose(more) := object.union({"id": "H1", "carries_ammonia": true}, more)

_found(have) := {"subject": "H1", "part": "H1", "have_kpa": have, "need_kpa": 2413}

_law := ["29 CFR 1910.111"]

_cases := {
	"behind a regulator, judged elsewhere": {"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 2412, "low_side": true})]}, "want": set()},
	"one below": {"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 2412})]}, "want": {_found(2412)}},
	"at the limit": {"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 2413})]}, "want": set()},
	"above": {"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 2414})]}, "want": set()},
	"unknown": {"given": {"regimes": _law, "hoses": [_hose({})]}, "want": set()},
	"hose does not carry ammonia": {
		"given": {
			"regimes": _law,
			"hoses": [_hose({"rated_kpa": 2412, "carries_ammonia": false})],
		},
		"want": set(),
	},
	"another regime": {"given": {"regimes": ["ADR"], "hoses": [_hose({"rated_kpa": 2412})]}, "want": set()},
	"no regime": {"given": {"regimes": [], "hoses": [_hose({"rated_kpa": 2412})]}, "want": set()},
	"one regime of two": {
		"given": {"regimes": ["ADR", "29 CFR 1910.111"], "hoses": [_hose({"rated_kpa": 2412})]},
		"want": {_found(2412)},
	},
	"two hoses, one short": {
		"given": {
			"regimes": _law,
			"hoses": [
				_hose({"rated_kpa": 2413}),
				_hose({"rated_kpa": 2411, "id": "H2"}),
			],
		},
		"want": {object.union(_found(2411), {"subject": "H2", "part": "H2"})},
	},
	"twin, ammonia hose of 350 psi": {
		"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 2413})]},
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	given := {"line": {"regimes": tc.given.regimes}, "hoses": tc.given.hoses}
	got := below_ammonia_law.report with input as given
	got == tc.want
}
