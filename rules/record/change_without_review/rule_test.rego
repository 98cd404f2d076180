package rules.record.change_without_review_test

import data.rules.record.change_without_review

# 29 CFR 1910.119(l)(1)-(2), CFR 2015 annual edition (published).
_line(more) := object.union(
	{"as_of_day": 20782, "changed": true, "change_record": true},
	more,
)

_found := {"subject": "line", "gap": "its record shows no authorisation up to this day"}

_cases := {
	"authorised one day later": {
		"given": _line({"change_in_kind": false, "change_authorised_day": 20783}),
		"want": {_found},
	},
	"authorised on the day": {
		"given": _line({"change_in_kind": false, "change_authorised_day": 20782}),
		"want": set(),
	},
	"twin, authorised the day before": {
		"given": _line({"change_in_kind": false, "change_authorised_day": 20781}),
		"want": set(),
	},
	"no authorisation": {
		"given": _line({"change_in_kind": false}),
		"want": {_found},
	},
	"no record": {
		"given": _line({"change_in_kind": false, "change_authorised_day": 20781, "change_record": false}),
		"want": {object.union(_found, {"gap": "no change record is named"})},
	},
	"neither": {
		"given": _line({"change_in_kind": false, "change_record": false}),
		"want": {object.union(_found, {"gap": "no change record is named"})},
	},
	"in kind": {
		"given": _line({"change_in_kind": true, "change_record": false}),
		"want": set(),
	},
	"not known whether in kind": {
		"given": _line({"change_record": false}),
		"want": set(),
	},
	"nothing changed": {
		"given": _line({"change_in_kind": false, "changed": false, "change_record": false}),
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := change_without_review.report with input as {"line": tc.given}
	got == tc.want
}
