package rules.flow.pressure_does_not_reach_test

import data.rules.flow.pressure_does_not_reach

# Acetone at 5.03 m/s through 10 m of smooth DN 25 hose takes 1 bar (computed with the Darcy equation).
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

_found := {"subject": "liquid", "run": "liquid", "have_kpa": 99, "need_kpa": 100}

_cases := {
	"one short": {
		"given": [_flow({"drop_kpa": 100, "driving_kpa": 99})],
		"want": {_found},
	},
	"just enough": {
		"given": [_flow({"drop_kpa": 100, "driving_kpa": 100})],
		"want": set(),
	},
	"to spare": {
		"given": [_flow({"drop_kpa": 100, "driving_kpa": 101})],
		"want": set(),
	},
	"twin, half the flow": {
		"given": [_flow({"drop_kpa": 27, "driving_kpa": 99})],
		"want": set(),
	},
	"drop unknown": {
		"given": [_flow({"driving_kpa": 99})],
		"want": set(),
	},
	"drive unknown": {
		"given": [_flow({"drop_kpa": 100})],
		"want": set(),
	},
	"flow not stated": {
		"given": [_flow({"drop_kpa": 100, "driving_kpa": 99, "flow_stated": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_flow({"drop_kpa": 27, "driving_kpa": 99}),
			_flow({"drop_kpa": 100, "driving_kpa": 99, "id": "flush"}),
		],
		"want": {object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"both of two": {
		"given": [
			_flow({"drop_kpa": 100, "driving_kpa": 99}),
			_flow({"drop_kpa": 100, "driving_kpa": 99, "id": "flush"}),
		],
		"want": {_found, object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := pressure_does_not_reach.report with input as {"flows": tc.given}
	got == tc.want
}
