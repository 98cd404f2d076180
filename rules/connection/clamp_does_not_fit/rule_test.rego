package rules.connection.clamp_does_not_fit_test

import data.rules.connection.clamp_does_not_fit

# Practice, no source: the range is what the maker stamps on the clamp.
_it(more) := object.union({"id": "H1", "clamp_stated": true, "clamp_least_um": 64000, "clamp_most_um": 67000}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "outside_um": 63999, "least_um": 64000, "most_um": 67000}, more)

_cases := {
	"one below": {
		"given": [_it({"outside_um": 63999})],
		"want": {_found({})},
	},
	"at the least": {
		"given": [_it({"outside_um": 64000})],
		"want": set(),
	},
	"at the most": {
		"given": [_it({"outside_um": 67000})],
		"want": set(),
	},
	"one past": {
		"given": [_it({"outside_um": 67001})],
		"want": {_found({"outside_um": 67001})},
	},
	"twin, within": {
		"given": [_it({"outside_um": 65500})],
		"want": set(),
	},
	"unknown": {
		"given": [_it({})],
		"want": set(),
	},
	"no clamp": {
		"given": [_it({"outside_um": 63999, "clamp_stated": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"outside_um": 65000}), _it({"id": "H2", "outside_um": 63999})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := clamp_does_not_fit.report with input as {"tails": tc.given}
	got == tc.want
}
