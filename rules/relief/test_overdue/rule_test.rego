package rules.relief.test_overdue_test

import data.rules.relief.test_overdue

# 29 CFR 1910.119(j)(4)(iii), CFR 2015 annual edition (published): as often as the maker and good practice say.
_relief(more) := object.union(
	{
		"id": "PSV1",
		"run": "liquid",
		"on_vessel": false,
		"weakest": "H1",
		"weakest_is_hose": true,
		"on_lpg_liquid": false,
		"isolatable_stated": true,
		"zone_a_cylinder": false,
	},
	more,
)

_found := {"subject": "PSV1", "part": "PSV1", "have_days": 366, "need_days": 365}

_cases := {
	"one day past": {
		"given": [_relief({"days_since_test": 366, "test_interval_days": 365})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_relief({"days_since_test": 365, "test_interval_days": 365})],
		"want": set(),
	},
	"below": {
		"given": [_relief({"days_since_test": 364, "test_interval_days": 365})],
		"want": set(),
	},
	"date unknown": {
		"given": [_relief({"test_interval_days": 365})],
		"want": set(),
	},
	"interval unknown": {
		"given": [_relief({"days_since_test": 366})],
		"want": set(),
	},
	"device of a vessel": {
		"given": [_relief({"days_since_test": 366, "test_interval_days": 365, "on_vessel": true})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_relief({"days_since_test": 365, "test_interval_days": 365}),
			_relief({"days_since_test": 366, "test_interval_days": 365, "id": "PSV2"}),
		],
		"want": {object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"both of two": {
		"given": [
			_relief({"days_since_test": 366, "test_interval_days": 365}),
			_relief({"days_since_test": 366, "test_interval_days": 365, "id": "PSV2"}),
		],
		"want": {_found, object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_overdue.report with input as {"reliefs": tc.given}
	got == tc.want
}
