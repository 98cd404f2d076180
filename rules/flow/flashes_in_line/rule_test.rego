package rules.flow.flashes_in_line_test

import data.rules.flow.flashes_in_line

# Acetone at 40 °C has 56.6 kPa absolute (computed); boiling starts where the line falls to that.
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
	"at the vapour pressure": {
		"given": [_flow({"flashing_margin_kpa": 0})],
		"want": {_found},
	},
	"one below it": {
		"given": [_flow({"flashing_margin_kpa": -1})],
		"want": {_found},
	},
	"one above it": {
		"given": [_flow({"flashing_margin_kpa": 1})],
		"want": set(),
	},
	"twin, cold: 44 kPa to the air": {
		"given": [_flow({"flashing_margin_kpa": 44})],
		"want": set(),
	},
	"unknown": {
		"given": [_flow({})],
		"want": set(),
	},
	"flow not stated": {
		"given": [_flow({"flashing_margin_kpa": 0, "flow_stated": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_flow({"flashing_margin_kpa": 44}), _flow({"flashing_margin_kpa": 0, "id": "flush"})],
		"want": {object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"both of two": {
		"given": [_flow({"flashing_margin_kpa": 0}), _flow({"flashing_margin_kpa": 0, "id": "flush"})],
		"want": {_found, object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := flashes_in_line.report with input as {"flows": tc.given}
	got == tc.want
}
