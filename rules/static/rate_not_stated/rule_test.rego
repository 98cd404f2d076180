package rules.static.rate_not_stated_test

import data.rules.static.rate_not_stated

# 1 m/s or less in earthed conducting pipe is in general no hazard (BG RCI guidance on TRGS 727 4.4.1,
# published).
_flow(more) := object.union(
	{
		"id": "liquid",
		"flow_stated": false,
		"carries_flammable": true,
		"narrowest": "H1",
		"enters_from_above": false,
		"fine_filter": false,
		"gas_from_cylinders": false,
	},
	more,
)

_found := {"subject": "liquid", "run": "liquid", "charge": "holds charge"}

_cases := {
	"holds charge": {
		"given": [_flow({"carries_accumulator": true})],
		"want": {_found},
	},
	"conductivity unknown": {
		"given": [_flow({})],
		"want": {object.union(_found, {"charge": "may hold charge, its conductivity being unknown,"})},
	},
	"conducts well": {
		"given": [_flow({"carries_accumulator": false})],
		"want": set(),
	},
	"twin, flow stated": {
		"given": [_flow({"carries_accumulator": true, "flow_stated": true})],
		"want": set(),
	},
	"not flammable": {
		"given": [_flow({"carries_accumulator": true, "carries_flammable": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_flow({"carries_accumulator": false}), _flow({"carries_accumulator": true, "id": "flush"})],
		"want": {object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"both of two": {
		"given": [_flow({"carries_accumulator": true}), _flow({"carries_accumulator": true, "id": "flush"})],
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
