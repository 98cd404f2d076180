package rules.pressure.burst_ratio_below_waterfront_gas_law_test

import data.rules.pressure.burst_ratio_below_waterfront_gas_law

# 33 CFR 127.1102(a), CFR 2015 annual edition (published): burst at least five times the working pressure.
_hose(more) := object.union({"id": "H1", "carries_liquefied_gas": true}, more)

_found(have) := {"subject": "H1", "part": "H1", "have_ratio_permille": have, "need_ratio_permille": 5000}

_law := ["33 CFR 127.1102"]

_cases := {
	"one below": {
		"given": {"regimes": _law, "hoses": [_hose({"burst_ratio_permille": 4999})]},
		"want": {_found(4999)},
	},
	"at the limit": {"given": {"regimes": _law, "hoses": [_hose({"burst_ratio_permille": 5000})]}, "want": set()},
	"above": {"given": {"regimes": _law, "hoses": [_hose({"burst_ratio_permille": 5001})]}, "want": set()},
	"unknown": {"given": {"regimes": _law, "hoses": [_hose({})]}, "want": set()},
	"hose does not carry liquefied gas": {
		"given": {
			"regimes": _law,
			"hoses": [
				_hose({
					"burst_ratio_permille": 4999,
					"carries_liquefied_gas": false,
				}),
			],
		},
		"want": set(),
	},
	"another regime": {
		"given": {"regimes": ["ADR"], "hoses": [_hose({"burst_ratio_permille": 4999})]},
		"want": set(),
	},
	"no regime": {"given": {"regimes": [], "hoses": [_hose({"burst_ratio_permille": 4999})]}, "want": set()},
	"one regime of two": {
		"given": {
			"regimes": ["ADR", "33 CFR 127.1102"],
			"hoses": [_hose({"burst_ratio_permille": 4999})],
		},
		"want": {_found(4999)},
	},
	"two hoses, one short": {
		"given": {
			"regimes": _law,
			"hoses": [
				_hose({"burst_ratio_permille": 5000}),
				_hose({"burst_ratio_permille": 4998, "id": "H2"}),
			],
		},
		"want": {object.union(_found(4998), {"subject": "H2", "part": "H2"})},
	},
	"twin, hose of 350 and 1750 psi": {
		"given": {
			"regimes": _law,
			"hoses": [_hose({"burst_ratio_permille": 5000})],
		},
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	given := {"line": {"regimes": tc.given.regimes}, "hoses": tc.given.hoses}
	got := burst_ratio_below_waterfront_gas_law.report with input as given
	got == tc.want
}
