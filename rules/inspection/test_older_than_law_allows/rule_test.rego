package rules.inspection.test_older_than_law_allows_test

import data.rules.inspection.test_older_than_law_allows

# 33 CFR 156.170(f)(1), 33 CFR 127.1407, 46 CFR 151.04-5(j) and 49 CFR 180.416(e), CFR 2015 annual
# edition (published).
_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_days": 366, "need_days": 365, "law": "33 CFR 156.170"}

_cases := {
	"one day past, oil transfer": {
		"line": {"regimes": ["33 CFR 156.170"]},
		"given": [_hose({"days_since_test": 366})],
		"want": {_found},
	},
	"twin, at the limit": {
		"line": {"regimes": ["33 CFR 156.170"]},
		"given": [_hose({"days_since_test": 365})],
		"want": set(),
	},
	"below": {
		"line": {"regimes": ["33 CFR 156.170"]},
		"given": [_hose({"days_since_test": 364})],
		"want": set(),
	},
	"oil hose": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_hose({"days_since_test": 366})],
		"want": {object.union(_found, {"law": "33 CFR 154.500"})},
	},
	"oil hose, at the limit": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_hose({"days_since_test": 365})],
		"want": set(),
	},
	"road, one day past": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"days_since_test": 366})],
		"want": {object.union(_found, {"law": "49 CFR 180.416"})},
	},
	"road, at the limit": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"days_since_test": 365})],
		"want": set(),
	},
	"barge, one day past": {
		"line": {"regimes": ["46 CFR 151.04-5"]},
		"given": [_hose({"days_since_test": 731})],
		"want": {object.union(_found, {"have_days": 731, "need_days": 730, "law": "46 CFR 151.04-5"})},
	},
	"barge, at the limit": {
		"line": {"regimes": ["46 CFR 151.04-5"]},
		"given": [_hose({"days_since_test": 730})],
		"want": set(),
	},
	"waterfront, one day past": {
		"line": {"regimes": ["33 CFR 127.1407"]},
		"given": [_hose({"days_since_test": 455})],
		"want": {object.union(_found, {"have_days": 455, "need_days": 454, "law": "33 CFR 127.1407"})},
	},
	"waterfront, at the limit": {
		"line": {"regimes": ["33 CFR 127.1407"]},
		"given": [_hose({"days_since_test": 454})],
		"want": set(),
	},
	"waterfront hose, one day past": {
		"line": {"regimes": ["33 CFR 127.1102"]},
		"given": [_hose({"days_since_test": 455})],
		"want": {object.union(_found, {"have_days": 455, "need_days": 454, "law": "33 CFR 127.1102"})},
	},
	"waterfront hose, at the limit": {
		"line": {"regimes": ["33 CFR 127.1102"]},
		"given": [_hose({"days_since_test": 454})],
		"want": set(),
	},
	"strictest of two": {
		"line": {"regimes": ["33 CFR 156.170", "46 CFR 151.04-5"]},
		"given": [_hose({"days_since_test": 366})],
		"want": {_found},
	},
	"two alike": {
		"line": {"regimes": ["33 CFR 154.500", "33 CFR 156.170"]},
		"given": [_hose({"days_since_test": 366})],
		"want": {object.union(_found, {"law": "33 CFR 154.500, 33 CFR 156.170"})},
	},
	"law without an interval": {
		"line": {"regimes": ["ADR"]},
		"given": [_hose({"days_since_test": 366})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_hose({"days_since_test": 366})],
		"want": set(),
	},
	"date unknown": {
		"line": {"regimes": ["33 CFR 156.170"]},
		"given": [_hose({})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["33 CFR 156.170"]},
		"given": [_hose({"days_since_test": 365}), _hose({"days_since_test": 366, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": ["33 CFR 156.170"]},
		"given": [_hose({"days_since_test": 366}), _hose({"days_since_test": 366, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["33 CFR 156.170"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_older_than_law_allows.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
