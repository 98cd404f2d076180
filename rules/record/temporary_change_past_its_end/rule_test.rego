package rules.record.temporary_change_past_its_end_test

import data.rules.record.temporary_change_past_its_end

# 29 CFR 1910.119(l)(2)(iv), CFR 2015 annual edition (published).
_line(more) := object.union(
	{"as_of_day": 20782, "changed": true, "change_temporary": true},
	more,
)

_found := {"subject": "line", "until_day": 20781, "judged_day": 20782}

_cases := {
	"one day past": {
		"given": _line({"change_until_day": 20781}),
		"want": {_found},
	},
	"twin, on its last day": {
		"given": _line({"change_until_day": 20782}),
		"want": set(),
	},
	"before": {
		"given": _line({"change_until_day": 20783}),
		"want": set(),
	},
	"end unknown": {
		"given": _line({}),
		"want": set(),
	},
	"a lasting change": {
		"given": _line({"change_until_day": 20781, "change_temporary": false}),
		"want": set(),
	},
	"nothing changed": {
		"given": _line({"change_until_day": 20781, "changed": false}),
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := temporary_change_past_its_end.report with input as {"line": tc.given}
	got == tc.want
}
