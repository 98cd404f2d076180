package rules.marking.chemical_cargo_marks_incomplete_test

import data.rules.marking.chemical_cargo_marks_incomplete

# 46 CFR 153.940, CFR 2015 annual edition (published).
_it(more) := object.union({"id": "H1", "marked_test_date": true, "marked_temperatures": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "missing": "working pressure, year made"}, more)

_law := {"regimes": ["46 CFR 153.940"]}

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
	"no date of test": {
		"line": _law,
		"given": [_it({"marked_pressure": true, "marked_year": true, "marked_test_date": false})],
		"want": {_found({"missing": "date of the last test"})},
	},
	"no temperatures": {
		"line": _law,
		"given": [_it({"marked_pressure": true, "marked_year": true, "marked_temperatures": false})],
		"want": {_found({"missing": "highest and lowest temperature"})},
	},
	"marks not stated": {
		"line": _law,
		"given": [{"id": "H1"}],
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
}

test_report[note] if {
	some note, tc in _cases
	got := chemical_cargo_marks_incomplete.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
