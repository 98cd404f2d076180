package rules.connection.bolts_missing_test

import data.rules.connection.bolts_missing

# All bolts on land is practice, no source; 33 CFR 156.130, CFR 2015 annual edition (published), for a
# permanent joint and for any other flange afloat. Class 150 NPS 4 has eight holes, ASME B16.5
# (published).
_it(more) := object.union({"id": "V1 to H1", "a": "V1", "b": "H1", "bolts_in_question": true, "class_flange": true, "at_hose": true, "bolt_holes": 8}, more)

_found(more) := object.union({"subject": "V1 to H1", "a": "V1", "b": "H1", "have_count": 7, "need_count": 8}, more)

_cases := {
	"one below": {
		"line": {"regimes": []},
		"given": [_it({"bolts": 7})],
		"want": {_found({})},
	},
	"at the number of holes": {
		"line": {"regimes": []},
		"given": [_it({"bolts": 8})],
		"want": set(),
	},
	"one above": {
		"line": {"regimes": []},
		"given": [_it({"bolts": 9})],
		"want": set(),
	},
	"unknown": {
		"line": {"regimes": []},
		"given": [_it({})],
		"want": set(),
	},
	"none": {
		"line": {"regimes": []},
		"given": [_it({"bolts": 0})],
		"want": {_found({"have_count": 0})},
	},
	"not in question": {
		"line": {"regimes": []},
		"given": [_it({"bolts": 7, "bolts_in_question": false})],
		"want": set(),
	},
	"marine law, class flange at a hose": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 7})],
		"want": set(),
	},
	"marine law, PN flange": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 7, "class_flange": false})],
		"want": {_found({})},
	},
	"marine law, permanent joint": {
		"line": {"regimes": ["33 CFR 156.130"]},
		"given": [_it({"bolts": 7, "at_hose": false})],
		"want": {_found({})},
	},
	"another law, PN flange": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_it({"bolts": 7})],
		"want": {_found({})},
	},
	"the second of two": {
		"line": {"regimes": []},
		"given": [_it({"bolts": 8}), _it({"bolts": 4, "id": "H1 to V2"})],
		"want": {_found({"subject": "H1 to V2", "have_count": 4})},
	},
	"nothing to judge": {
		"line": {"regimes": []},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := bolts_missing.report with input as {"line": tc.line, "joints": tc.given}
	got == tc.want
}
