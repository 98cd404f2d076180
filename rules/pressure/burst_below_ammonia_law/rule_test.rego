package rules.pressure.burst_below_ammonia_law_test

import data.rules.pressure.burst_below_ammonia_law

# 29 CFR 1910.111(b)(8)(ii), CFR 2015 annual edition (published): at least 1750 psig = 12065.8 kPa.
_hose(more) := object.union({"id": "H1", "carries_ammonia": true}, more)

_found(have) := {"subject": "H1", "part": "H1", "have_kpa": have, "need_kpa": 12065}

_law := ["29 CFR 1910.111"]

_cases := {
	"behind a regulator, judged elsewhere": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 12064, "low_side": true})]}, "want": set()},
	"one below": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 12064})]}, "want": {_found(12064)}},
	"at the limit": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 12065})]}, "want": set()},
	"above": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 12066})]}, "want": set()},
	"unknown": {"given": {"regimes": _law, "hoses": [_hose({})]}, "want": set()},
	"hose does not carry ammonia": {
		"given": {
			"regimes": _law,
			"hoses": [_hose({"burst_kpa": 12064, "carries_ammonia": false})],
		},
		"want": set(),
	},
	"another regime": {"given": {"regimes": ["ADR"], "hoses": [_hose({"burst_kpa": 12064})]}, "want": set()},
	"no regime": {"given": {"regimes": [], "hoses": [_hose({"burst_kpa": 12064})]}, "want": set()},
	"one regime of two": {
		"given": {
			"regimes": ["ADR", "29 CFR 1910.111"],
			"hoses": [_hose({"burst_kpa": 12064})],
		},
		"want": {_found(12064)},
	},
	"two hoses, one short": {
		"given": {
			"regimes": _law,
			"hoses": [
				_hose({"burst_kpa": 12065}),
				_hose({"burst_kpa": 12063, "id": "H2"}),
			],
		},
		"want": {object.union(_found(12063), {"subject": "H2", "part": "H2"})},
	},
	"twin, ammonia hose of 2000 psi": {
		"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 13789})]},
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	given := {"line": {"regimes": tc.given.regimes}, "hoses": tc.given.hoses}
	got := burst_below_ammonia_law.report with input as given
	got == tc.want
}
