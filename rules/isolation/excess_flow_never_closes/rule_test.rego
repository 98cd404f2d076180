package rules.isolation.excess_flow_never_closes_test

import data.rules.isolation.excess_flow_never_closes

# 29 CFR 1910.111(b)(6)(iii), CFR 2015 annual edition (published): the line passes more than the
# closing flow.
_it(more) := object.union({"id": "EF1", "credited": true, "closing_flow_mlps": 3000}, more)

_found(more) := object.union({"subject": "EF1", "part": "EF1", "have_mlps": 3000, "need_mlps": 3000}, more)

_cases := {
	"at the closing flow": {
		"given": [_it({"broken_flow_mlps": 3000})],
		"want": {_found({})},
	},
	"one below": {
		"given": [_it({"broken_flow_mlps": 2999})],
		"want": {_found({"have_mlps": 2999})},
	},
	"one past": {
		"given": [_it({"broken_flow_mlps": 3001})],
		"want": set(),
	},
	"flow unknown": {
		"given": [_it({})],
		"want": set(),
	},
	"not credited": {
		"given": [_it({"broken_flow_mlps": 3000, "credited": false})],
		"want": set(),
	},
	"twin, a smaller valve": {
		"given": [_it({"broken_flow_mlps": 3000, "closing_flow_mlps": 2000})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"broken_flow_mlps": 9000}), _it({"broken_flow_mlps": 3000, "id": "EF2"})],
		"want": {_found({"subject": "EF2", "part": "EF2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := excess_flow_never_closes.report with input as {"excess_flows": tc.given}
	got == tc.want
}
