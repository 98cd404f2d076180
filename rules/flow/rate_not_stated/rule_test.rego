package rules.flow.rate_not_stated_test

import data.rules.flow.rate_not_stated

# Common practice, without a source.
_flow(more) := object.union(
	{
		"id": "liquid",
		"flow_stated": true,
		"carries_flammable": true,
		"narrowest": "H1",
		"enters_from_above": false,
		"fine_filter": false,
		"gas_from_cylinders": false,
	},
	more,
)

_found := {"subject": "liquid", "run": "liquid"}

_cases := {
	"not stated": {
		"given": [_flow({"flow_stated": false})],
		"want": {_found},
	},
	"twin, stated": {
		"given": [_flow({"flow_stated": true})],
		"want": set(),
	},
	"stated, nothing worked out": {
		"given": [_flow({"flow_stated": true, "narrowest": ""})],
		"want": set(),
	},
	"the second of two": {
		"given": [_flow({}), _flow({"flow_stated": false, "id": "flush"})],
		"want": {object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"both of two": {
		"given": [_flow({"flow_stated": false}), _flow({"flow_stated": false, "id": "flush"})],
		"want": {_found, object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := rate_not_stated.report with input as {"flows": tc.given}
	got == tc.want
}
