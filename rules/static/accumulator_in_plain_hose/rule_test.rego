package rules.static.accumulator_in_plain_hose_test

import data.rules.static.accumulator_in_plain_hose

# Low conductivity counts only where it is a stored fact; an unknown one is no reason.
_hose(more) := object.union(
	{"id": "H1", "carries_flammable": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "grade": "M"}

_cases := {
	"faulty": {
		"given": [_hose({"carries_accumulator": true, "electrical_grade": "M"})],
		"want": {_found},
	},
	"grade Ohm": {
		"given": [_hose({"carries_accumulator": true, "electrical_grade": "Ohm"})],
		"want": {object.union(_found, {"grade": "Ohm"})},
	},
	"twin, through the wall": {
		"given": [_hose({"carries_accumulator": true, "electrical_grade": "M/T"})],
		"want": set(),
	},
	"conductive, through the wall": {
		"given": [_hose({"carries_accumulator": true, "electrical_grade": "Ohm/T"})],
		"want": set(),
	},
	"insulating hose, judged elsewhere": {
		"given": [_hose({"carries_accumulator": true, "electrical_grade": "none"})],
		"want": set(),
	},
	"liquid that does not hold charge": {
		"given": [_hose({"carries_accumulator": false, "electrical_grade": "M"})],
		"want": set(),
	},
	"conductivity unknown": {
		"given": [_hose({"electrical_grade": "M"})],
		"want": set(),
	},
	"grade unknown": {
		"given": [_hose({"carries_accumulator": true})],
		"want": set(),
	},
	"nothing flammable": {
		"given": [_hose({"carries_accumulator": true, "electrical_grade": "M", "carries_flammable": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_hose({"carries_accumulator": true, "electrical_grade": "M/T"}),
			_hose({"carries_accumulator": true, "electrical_grade": "M", "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [
			_hose({"carries_accumulator": true, "electrical_grade": "M"}),
			_hose({"carries_accumulator": true, "electrical_grade": "M", "id": "H2"}),
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
	got := accumulator_in_plain_hose.report with input as {"hoses": tc.given}
	got == tc.want
}
