package rules.pressure.below_waterfront_gas_law_test

import data.rules.pressure.below_waterfront_gas_law

# 33 CFR 127.1102(a), CFR 2015 annual edition (published): at least 1030 kPa = 149.4 psig.
_hose(more) := object.union({"id": "H1", "carries_liquefied_gas": true}, more)

_found(have) := {"subject": "H1", "part": "H1", "have_kpa": have, "need_kpa": 1030}

_law := ["33 CFR 127.1102"]

_cases := {
	"one below": {"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 1029})]}, "want": {_found(1029)}},
	"at the limit": {"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 1030})]}, "want": set()},
	"above": {"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 1031})]}, "want": set()},
	"unknown": {"given": {"regimes": _law, "hoses": [_hose({})]}, "want": set()},
	"hose does not carry liquefied gas": {
		"given": {
			"regimes": _law,
			"hoses": [
				_hose({
					"rated_kpa": 1029,
					"carries_liquefied_gas": false,
				}),
			],
		},
		"want": set(),
	},
	"another regime": {"given": {"regimes": ["ADR"], "hoses": [_hose({"rated_kpa": 1029})]}, "want": set()},
	"no regime": {"given": {"regimes": [], "hoses": [_hose({"rated_kpa": 1029})]}, "want": set()},
	"one regime of two": {
		"given": {"regimes": ["ADR", "33 CFR 127.1102"], "hoses": [_hose({"rated_kpa": 1029})]},
		"want": {_found(1029)},
	},
	"two hoses, one short": {
		"given": {
			"regimes": _law,
			"hoses": [
				_hose({"rated_kpa": 1030}),
				_hose({"rated_kpa": 1028, "id": "H2"}),
			],
		},
		"want": {object.union(_found(1028), {"subject": "H2", "part": "H2"})},
	},
	"twin, hose of 350 psi": {"given": {"regimes": _law, "hoses": [_hose({"rated_kpa": 2413})]}, "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	given := {"line": {"regimes": tc.given.regimes}, "hoses": tc.given.hoses}
	got := below_waterfront_gas_law.report with input as given
	got == tc.want
}
