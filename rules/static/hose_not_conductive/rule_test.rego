package rules.static.hose_not_conductive_test

import data.rules.static.hose_not_conductive

# 33 CFR 154.2101(g), CFR 2015 annual edition (published): one insulating length between ship and
# shore.
_hose(more) := object.union(
	{"id": "H1", "carries_flammable": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "grade": "none"}

_cases := {
	"faulty": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "none"})],
		"want": {_found},
	},
	"insulating break": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "discontinuous"})],
		"want": {object.union(_found, {"grade": "discontinuous"})},
	},
	"insulating break, other law": {
		"line": {"regimes": ["ADR"]},
		"given": [_hose({"electrical_grade": "discontinuous"})],
		"want": {object.union(_found, {"grade": "discontinuous"})},
	},
	"insulating break, ship vapour hose": {
		"line": {"regimes": ["33 CFR 154.2101"]},
		"given": [_hose({"electrical_grade": "discontinuous"})],
		"want": set(),
	},
	"insulating break, oil dock": {
		"line": {"regimes": ["ADR", "33 CFR 154.500"]},
		"given": [_hose({"electrical_grade": "discontinuous"})],
		"want": set(),
	},
	"no grade, oil dock": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_hose({"electrical_grade": "none"})],
		"want": {_found},
	},
	"twin, bonded wire": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "M"})],
		"want": set(),
	},
	"conductive rubber": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "Ohm"})],
		"want": set(),
	},
	"bonded, through the wall": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "M/T"})],
		"want": set(),
	},
	"conductive, through the wall": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "Ohm/T"})],
		"want": set(),
	},
	"grade unknown": {
		"line": {"regimes": []},
		"given": [_hose({})],
		"want": set(),
	},
	"nothing flammable": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "none", "carries_flammable": false})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "M"}), _hose({"electrical_grade": "none", "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": []},
		"given": [_hose({"electrical_grade": "none"}), _hose({"electrical_grade": "none", "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": []},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hose_not_conductive.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
