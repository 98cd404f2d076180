package rules.static.second_insulating_length_test

import data.rules.static.second_insulating_length

# 33 CFR 154.2101(g), CFR 2015 annual edition (published): exactly one.
_hose(more) := object.union(
	{"id": "H1", "run": "vapour"},
	more,
)

_found := {"subject": "H1", "part": "H1", "run": "vapour"}

_cases := {
	"two of them": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [
			_hose({"electrical_grade": "discontinuous"}),
			_hose({"electrical_grade": "discontinuous", "id": "H2"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"two of three": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [
			_hose({"electrical_grade": "discontinuous"}),
			_hose({"electrical_grade": "discontinuous", "id": "H2"}),
			_hose({"electrical_grade": "M", "id": "H3"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"twin, one of two": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "discontinuous"}), _hose({"electrical_grade": "M", "id": "H2"})],
		"want": set(),
	},
	"grade of the other unknown": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "discontinuous"}), _hose({"id": "H2"})],
		"want": set(),
	},
	"in another run": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [
			_hose({"electrical_grade": "discontinuous"}),
			_hose({"electrical_grade": "discontinuous", "id": "H2", "run": "liquid"}),
		],
		"want": set(),
	},
	"other law": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [
			_hose({"electrical_grade": "discontinuous"}),
			_hose({"electrical_grade": "discontinuous", "id": "H2"}),
		],
		"want": set(),
	},
	"nothing to judge": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := second_insulating_length.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
