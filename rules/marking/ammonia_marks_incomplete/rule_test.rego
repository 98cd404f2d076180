package rules.marking.ammonia_marks_incomplete_test

import data.rules.marking.ammonia_marks_incomplete

# 29 CFR 1910.111(b)(8)(v), CFR 2015 annual edition (published).
_hose(more) := object.union(
	{"id": "H1", "carries_ammonia": true, "marked_ammonia": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "missing": "maker, working pressure, year made"}

_cases := {
	"all three missing": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({"marked_maker": false, "marked_pressure": false, "marked_year": false})],
		"want": {_found},
	},
	"no maker": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({"marked_maker": false, "marked_pressure": true, "marked_year": true})],
		"want": {object.union(_found, {"missing": "maker"})},
	},
	"no pressure": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({"marked_maker": true, "marked_pressure": false, "marked_year": true})],
		"want": {object.union(_found, {"missing": "working pressure"})},
	},
	"no year": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({"marked_maker": true, "marked_pressure": true, "marked_year": false})],
		"want": {object.union(_found, {"missing": "year made"})},
	},
	"twin, all marked": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({"marked_maker": true, "marked_pressure": true, "marked_year": true})],
		"want": set(),
	},
	"marks unknown": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({})],
		"want": set(),
	},
	"not marked for ammonia, judged elsewhere": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [
			_hose({
				"marked_maker": false,
				"marked_pressure": false,
				"marked_year": false,
				"marked_ammonia": false,
			}),
		],
		"want": set(),
	},
	"no ammonia": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [
			_hose({
				"marked_maker": false,
				"marked_pressure": false,
				"marked_year": false,
				"carries_ammonia": false,
			}),
		],
		"want": set(),
	},
	"other law": {
		"line": {"regimes": ["ADR"]},
		"given": [_hose({"marked_maker": false, "marked_pressure": false, "marked_year": false})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [
			_hose({"marked_maker": true, "marked_pressure": true, "marked_year": true}),
			_hose({"marked_maker": false, "marked_pressure": false, "marked_year": false, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [
			_hose({"marked_maker": false, "marked_pressure": false, "marked_year": false}),
			_hose({"marked_maker": false, "marked_pressure": false, "marked_year": false, "id": "H2"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_marks_incomplete.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
