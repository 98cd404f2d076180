package rules.inspection.part_test_overdue_test

import data.rules.inspection.part_test_overdue

# 29 CFR 1910.119(j)(4)(iii), CFR 2015 annual edition (published): as often as the maker's recommendations and good
# practice want, and more often where experience shows the need.
_part(more) := object.union(
	{
		"id": "PR1",
		"run": "pad",
		"kind": "regulator",
		"carries_flammable": false,
		"carries_oxygen": false,
		"at_open_point": false,
		"acts_on_separation_only": false,
		"test_dated": true,
		"test_interval_days": 365,
	},
	more,
)

_found := {"subject": "PR1", "part": "PR1", "have_days": 366, "need_days": 365}

_cases := {
	"one past": {
		"given": [_part({"days_since_test": 366})],
		"want": {_found},
	},
	"on the last day": {
		"given": [_part({"days_since_test": 365})],
		"want": set(),
	},
	"twin, tested since": {
		"given": [_part({"days_since_test": 0})],
		"want": set(),
	},
	"years ago": {
		"given": [_part({"days_since_test": 1500})],
		"want": {object.union(_found, {"have_days": 1500})},
	},
	"a shorter interval": {
		"given": [_part({"days_since_test": 366, "test_interval_days": 180})],
		"want": {object.union(_found, {"need_days": 180})},
	},
	"no dates, which is no matter of this rule": {
		"given": [_part({"test_dated": false, "days_since_test": 366})],
		"want": set(),
	},
	"date unknown": {
		"given": [_part({})],
		"want": set(),
	},
	"the second of two": {
		"given": [_part({"days_since_test": 1}), _part({"id": "B1", "kind": "breakaway", "days_since_test": 366})],
		"want": {object.union(_found, {"subject": "B1", "part": "B1"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := part_test_overdue.report with input as {"parts": tc.given}
	got == tc.want
}
