package rules.inspection.ammonia_hose_past_legal_life_test

import data.rules.inspection.ammonia_hose_past_legal_life

# OAC 901:5-3-08(F) (published): five years from manufacture.
_hose(more) := object.union(
	{"id": "H1", "carries_ammonia": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_days": 1827, "need_days": 1826}

_cases := {
	"one day past": {
		"line": {"regimes": ["OAC 901:5-3-08"]},
		"given": [_hose({"age_days": 1827})],
		"want": {_found},
	},
	"twin, at the limit": {
		"line": {"regimes": ["OAC 901:5-3-08"]},
		"given": [_hose({"age_days": 1826})],
		"want": set(),
	},
	"below": {
		"line": {"regimes": ["OAC 901:5-3-08"]},
		"given": [_hose({"age_days": 1825})],
		"want": set(),
	},
	"age unknown": {
		"line": {"regimes": ["OAC 901:5-3-08"]},
		"given": [_hose({})],
		"want": set(),
	},
	"no ammonia": {
		"line": {"regimes": ["OAC 901:5-3-08"]},
		"given": [_hose({"age_days": 1827, "carries_ammonia": false})],
		"want": set(),
	},
	"other law": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({"age_days": 1827})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["OAC 901:5-3-08"]},
		"given": [_hose({"age_days": 1826}), _hose({"age_days": 1827, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": ["OAC 901:5-3-08"]},
		"given": [_hose({"age_days": 1827}), _hose({"age_days": 1827, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["OAC 901:5-3-08"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_hose_past_legal_life.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
