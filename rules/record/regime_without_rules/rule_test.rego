package rules.record.regime_without_rules_test

import data.rules.record.regime_without_rules

_cases := {
	"every regime has rules": {"given": [], "want": set()},
	"one has none": {
		"given": ["29 CFR 1910.111(b)"],
		"want": {{"subject": "line", "regime": "29 CFR 1910.111(b)"}},
	},
	"two have none": {
		"given": ["NFPA 30", "site rule 7"],
		"want": {
			{"subject": "line", "regime": "NFPA 30"},
			{"subject": "line", "regime": "site rule 7"},
		},
	},
	"twin, spelt as the rules spell it": {"given": [], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := regime_without_rules.report with input as {"line": {"regimes_without_rules": tc.given}}
	got == tc.want
}
