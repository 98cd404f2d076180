package rules.pressure.burst_below_lpg_law_test

import data.rules.pressure.burst_below_lpg_law

# 29 CFR 1910.110(b)(9)(iii), CFR 2015 annual edition (published): at least 1250 psig = 8618.4 kPa.
_hose(more) := object.union({"id": "H1", "carries_lpg": true}, more)

_found(have) := {"subject": "H1", "part": "H1", "have_kpa": have, "need_kpa": 8618}

_law := ["29 CFR 1910.110"]

_cases := {
	"behind a regulator, judged elsewhere": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 8617, "low_side": true})]}, "want": set()},
	"one below": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 8617})]}, "want": {_found(8617)}},
	"at the limit": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 8618})]}, "want": set()},
	"above": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 8619})]}, "want": set()},
	"unknown": {"given": {"regimes": _law, "hoses": [_hose({})]}, "want": set()},
	"hose does not carry LP-gas": {
		"given": {
			"regimes": _law,
			"hoses": [_hose({"burst_kpa": 8617, "carries_lpg": false})],
		},
		"want": set(),
	},
	"another regime": {"given": {"regimes": ["ADR"], "hoses": [_hose({"burst_kpa": 8617})]}, "want": set()},
	"no regime": {"given": {"regimes": [], "hoses": [_hose({"burst_kpa": 8617})]}, "want": set()},
	"one regime of two": {
		"given": {"regimes": ["ADR", "29 CFR 1910.110"], "hoses": [_hose({"burst_kpa": 8617})]},
		"want": {_found(8617)},
	},
	"two hoses, one short": {
		"given": {
			"regimes": _law,
			"hoses": [
				_hose({"burst_kpa": 8618}),
				_hose({"burst_kpa": 8616, "id": "H2"}),
			],
		},
		"want": {object.union(_found(8616), {"subject": "H2", "part": "H2"})},
	},
	"twin, hose of 1750 psi": {"given": {"regimes": _law, "hoses": [_hose({"burst_kpa": 12065})]}, "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	given := {"line": {"regimes": tc.given.regimes}, "hoses": tc.given.hoses}
	got := burst_below_lpg_law.report with input as given
	got == tc.want
}
