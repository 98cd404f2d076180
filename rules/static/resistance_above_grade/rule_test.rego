package rules.static.resistance_above_grade_test

import data.rules.static.resistance_above_grade

# ISO 2928:2021 (published): grade M at most 100 ohm, grade Ohm at most 1 000 000 ohm. EN 12115
# (restated): M/T and Ohm/T alike.
_hose(more) := object.union(
	{"id": "H1", "carries_flammable": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "grade": "M", "have_ohm": 101, "need_ohm": 100}

_cases := {
	"one past, grade M": {
		"given": [_hose({"electrical_grade": "M", "resistance_ohm": 101})],
		"want": {_found},
	},
	"twin, at the limit, grade M": {
		"given": [_hose({"electrical_grade": "M", "resistance_ohm": 100})],
		"want": set(),
	},
	"below, grade M": {
		"given": [_hose({"electrical_grade": "M", "resistance_ohm": 99})],
		"want": set(),
	},
	"one past, grade M/T": {
		"given": [_hose({"electrical_grade": "M/T", "resistance_ohm": 101})],
		"want": {object.union(_found, {"grade": "M/T"})},
	},
	"at the limit, grade M/T": {
		"given": [_hose({"electrical_grade": "M/T", "resistance_ohm": 100})],
		"want": set(),
	},
	"one past, grade Ohm": {
		"given": [_hose({"electrical_grade": "Ohm", "resistance_ohm": 1000001})],
		"want": {object.union(_found, {"grade": "Ohm", "have_ohm": 1000001, "need_ohm": 1000000})},
	},
	"at the limit, grade Ohm": {
		"given": [_hose({"electrical_grade": "Ohm", "resistance_ohm": 1000000})],
		"want": set(),
	},
	"one past, grade Ohm/T": {
		"given": [_hose({"electrical_grade": "Ohm/T", "resistance_ohm": 1000001})],
		"want": {object.union(_found, {"grade": "Ohm/T", "have_ohm": 1000001, "need_ohm": 1000000})},
	},
	"at the limit, grade Ohm/T": {
		"given": [_hose({"electrical_grade": "Ohm/T", "resistance_ohm": 1000000})],
		"want": set(),
	},
	"break on purpose": {
		"given": [_hose({"electrical_grade": "discontinuous", "resistance_ohm": 9000000})],
		"want": set(),
	},
	"resistance unknown": {
		"given": [_hose({"electrical_grade": "M"})],
		"want": set(),
	},
	"grade unknown": {
		"given": [_hose({"resistance_ohm": 101})],
		"want": set(),
	},
	"nothing flammable": {
		"given": [_hose({"electrical_grade": "M", "resistance_ohm": 101, "carries_flammable": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_hose({"electrical_grade": "M", "resistance_ohm": 100}),
			_hose({"electrical_grade": "M", "resistance_ohm": 101, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [
			_hose({"electrical_grade": "M", "resistance_ohm": 101}),
			_hose({"electrical_grade": "M", "resistance_ohm": 101, "id": "H2"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := resistance_above_grade.report with input as {"hoses": tc.given}
	got == tc.want
}
