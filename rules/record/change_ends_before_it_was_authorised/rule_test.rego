package rules.record.change_ends_before_it_was_authorised_test

import data.rules.record.change_ends_before_it_was_authorised

# 29 CFR 1910.119(l)(2), CFR 2015 annual edition (published): time period and authorisation are part of the
# record.
_found(more) := object.union({"subject": "line", "until_day": 20000, "authorised_day": 20001}, more)

_cases := {
	"a day before": {
		"line": {"changed": true, "change_temporary": true, "change_until_day": 20000, "change_authorised_day": 20001},
		"want": {_found({})},
	},
	"the same day": {
		"line": {"changed": true, "change_temporary": true, "change_until_day": 20001, "change_authorised_day": 20001},
		"want": set(),
	},
	"later": {
		"line": {"changed": true, "change_temporary": true, "change_until_day": 20030, "change_authorised_day": 20001},
		"want": set(),
	},
	"end unknown": {
		"line": {"changed": true, "change_temporary": true, "change_authorised_day": 20001},
		"want": set(),
	},
	"authorisation unknown": {
		"line": {"changed": true, "change_temporary": true, "change_until_day": 20000},
		"want": set(),
	},
	"not temporary": {
		"line": {"changed": true, "change_temporary": false, "change_until_day": 20000, "change_authorised_day": 20001},
		"want": set(),
	},
	"no change": {
		"line": {"changed": false, "change_temporary": true, "change_until_day": 20000, "change_authorised_day": 20001},
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := change_ends_before_it_was_authorised.report with input as {"line": tc.line}
	got == tc.want
}
