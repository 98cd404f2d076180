package rules.marking.marine_marks_incomplete_test

import data.rules.marking.marine_marks_incomplete

# 33 CFR 154.500(e)-(f), CFR 2015 annual edition (published).
_it(more) := object.union({"id": "H1", "assigned_stated": false}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "missing": "working pressure, year made"}, more)

_law := {"regimes": ["33 CFR 154.500"]}

_cases := {
	"both missing": {
		"line": _law,
		"given": [_it({"marked_pressure": false, "marked_year": false})],
		"want": {_found({})},
	},
	"no pressure": {
		"line": _law,
		"given": [_it({"marked_pressure": false, "marked_year": true})],
		"want": {_found({"missing": "working pressure"})},
	},
	"no year": {
		"line": _law,
		"given": [_it({"marked_pressure": true, "marked_year": false})],
		"want": {_found({"missing": "year made"})},
	},
	"both marked": {
		"line": _law,
		"given": [_it({"marked_pressure": true, "marked_year": true})],
		"want": set(),
	},
	"marks not stated": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"marked_pressure": false, "marked_year": false})],
		"want": set(),
	},
	"two, one marked": {
		"line": _law,
		"given": [_it({"marked_pressure": true, "marked_year": true}), _it({"id": "H2", "marked_pressure": false, "marked_year": false})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"year in the records of a numbered hose": {
		"line": _law,
		"given": [_it({"marked_pressure": true, "marked_year": false, "assigned_stated": true})],
		"want": set(),
	},
	"pressure is wanted even so": {
		"line": _law,
		"given": [_it({"marked_pressure": false, "marked_year": false, "assigned_stated": true})],
		"want": {_found({"missing": "working pressure"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := marine_marks_incomplete.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
