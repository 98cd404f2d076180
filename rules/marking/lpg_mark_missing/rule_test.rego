package rules.marking.lpg_mark_missing_test

import data.rules.marking.lpg_mark_missing

# 29 CFR 1910.110(b)(9)(ii), CFR 2015 annual edition (published).
_hose(more) := object.union(
	{"id": "H1", "carries_lpg": true},
	more,
)

_found := {"subject": "H1", "part": "H1"}

_cases := {
	"faulty": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_hose({"marked_lpg": false})],
		"want": {_found},
	},
	"twin, marked": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_hose({"marked_lpg": true})],
		"want": set(),
	},
	"marks unknown": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_hose({})],
		"want": set(),
	},
	"another gas": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_hose({"marked_lpg": false, "carries_lpg": false})],
		"want": set(),
	},
	"other law": {
		"line": {"regimes": []},
		"given": [_hose({"marked_lpg": false})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_hose({"marked_lpg": true}), _hose({"marked_lpg": false, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [_hose({"marked_lpg": false}), _hose({"marked_lpg": false, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["29 CFR 1910.110"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := lpg_mark_missing.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
