package rules.isolation.excess_flow_closes_in_service_test

import data.rules.isolation.excess_flow_closes_in_service

# Practice, no source: closing flow at least one and a half times the planned flow.
_it(more) := object.union({"id": "EF1", "credited": true, "closing_flow_mlps": 3000}, more)

_found(more) := object.union({"subject": "EF1", "part": "EF1", "closing_mlps": 2999, "duty_mlps": 2000}, more)

_cases := {
	"one below": {
		"given": [_it({"closing_flow_mlps": 2999, "duty_flow_mlps": 2000})],
		"want": {_found({})},
	},
	"at half as much again": {
		"given": [_it({"duty_flow_mlps": 2000})],
		"want": set(),
	},
	"above": {
		"given": [_it({"closing_flow_mlps": 3001, "duty_flow_mlps": 2000})],
		"want": set(),
	},
	"flow unknown": {
		"given": [_it({})],
		"want": set(),
	},
	"not credited": {
		"given": [_it({"closing_flow_mlps": 2999, "duty_flow_mlps": 2000, "credited": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"duty_flow_mlps": 1}), _it({"closing_flow_mlps": 2999, "duty_flow_mlps": 2000, "id": "EF2"})],
		"want": {_found({"subject": "EF2", "part": "EF2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := excess_flow_closes_in_service.report with input as {"excess_flows": tc.given}
	got == tc.want
}
