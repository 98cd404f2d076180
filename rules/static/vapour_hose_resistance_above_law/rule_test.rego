package rules.static.vapour_hose_resistance_above_law_test

import data.rules.static.vapour_hose_resistance_above_law

# 33 CFR 154.2101(d), CFR 2015 annual edition (published): at most 10 000 ohm; (g) allows one
# insulating length.
_hose(more) := object.union(
	{"id": "H1", "carries_gas": true, "carries_flammable": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_ohm": 10001, "need_ohm": 10000}

_cases := {
	"one past": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "Ohm", "resistance_ohm": 10001})],
		"want": {_found},
	},
	"twin, at the limit": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "Ohm", "resistance_ohm": 10000})],
		"want": set(),
	},
	"below": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "Ohm", "resistance_ohm": 9999})],
		"want": set(),
	},
	"no grade": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "none", "resistance_ohm": 10001})],
		"want": {_found},
	},
	"grade M": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "M", "resistance_ohm": 10001})],
		"want": {_found},
	},
	"grade M/T": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "M/T", "resistance_ohm": 10001})],
		"want": {_found},
	},
	"grade Ohm/T": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "Ohm/T", "resistance_ohm": 10001})],
		"want": {_found},
	},
	"the one insulating length": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "discontinuous", "resistance_ohm": 10001})],
		"want": set(),
	},
	"resistance unknown": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "Ohm"})],
		"want": set(),
	},
	"grade unknown": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"resistance_ohm": 10001})],
		"want": set(),
	},
	"liquid hose": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "Ohm", "resistance_ohm": 10001, "carries_gas": false})],
		"want": set(),
	},
	"nothing flammable": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "Ohm", "resistance_ohm": 10001, "carries_flammable": false})],
		"want": set(),
	},
	"other law": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "Ohm", "resistance_ohm": 10001})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [
			_hose({"electrical_grade": "Ohm", "resistance_ohm": 10000}),
			_hose({"electrical_grade": "Ohm", "resistance_ohm": 10001, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [
			_hose({"electrical_grade": "Ohm", "resistance_ohm": 10001}),
			_hose({"electrical_grade": "Ohm", "resistance_ohm": 10001, "id": "H2"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := vapour_hose_resistance_above_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
