package rules.connection.bolts_below_marine_law_test

import data.rules.connection.bolts_below_marine_law

# 33 CFR 156.130, CFR 2015 annual edition (published).
_it(more) := object.union({"id": "V1 to H1", "a": "V1", "b": "H1", "bolts_in_question": true, "class_flange": true, "at_hose": true, "bolt_holes": 12}, more)

_found(more) := object.union({"subject": "V1 to H1", "a": "V1", "b": "H1", "bolts_count": 5, "holes_count": 12}, more)

_cases := {
	"one below every other": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 5})],
		"want": {_found({})},
	},
	"every other": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 6})],
		"want": set(),
	},
	"above": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 7})],
		"want": set(),
	},
	"unknown": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({})],
		"want": set(),
	},
	"four holes, three bolts": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 3, "bolt_holes": 4})],
		"want": {_found({"bolts_count": 3, "holes_count": 4})},
	},
	"four holes, four bolts": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 4, "bolt_holes": 4})],
		"want": set(),
	},
	"four of eight": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 4, "bolt_holes": 8})],
		"want": set(),
	},
	"PN flange": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 5, "class_flange": false})],
		"want": set(),
	},
	"permanent": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 5, "at_hose": false})],
		"want": set(),
	},
	"not in question": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 5, "bolts_in_question": false})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": []},
		"given": [_it({"bolts": 5})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 12}), _it({"bolts": 5, "id": "H1 to V2"})],
		"want": {_found({"subject": "H1 to V2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := bolts_below_marine_law.report with input as {"line": tc.line, "joints": tc.given}
	got == tc.want
}
