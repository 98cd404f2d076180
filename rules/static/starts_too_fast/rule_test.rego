package rules.static.starts_too_fast_test

import data.rules.static.starts_too_fast

# 1 m/s until the inlet is covered: API RP 2003 and NFPA 77 (both recalled).
_flow(more) := object.union(
	{
		"id": "liquid",
		"flow_stated": true,
		"carries_flammable": true,
		"narrowest": "H1",
		"enters_from_above": true,
		"fine_filter": false,
		"gas_from_cylinders": false,
	},
	more,
)

_found := {
	"subject": "liquid",
	"run": "liquid",
	"charge": "holds charge",
	"have_mmps": 1001,
	"need_mmps": 1000,
}

_cases := {
	"one past 1 m/s": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 1001})],
		"want": {_found},
	},
	"twin, at 1 m/s": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 1000})],
		"want": set(),
	},
	"below": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 999})],
		"want": set(),
	},
	"conductivity unknown": {
		"given": [_flow({"velocity_mmps": 1001})],
		"want": {object.union(_found, {"charge": "may hold charge, its conductivity being unknown,"})},
	},
	"conducts well": {
		"given": [_flow({"carries_accumulator": false, "velocity_mmps": 1001})],
		"want": set(),
	},
	"speed unknown": {
		"given": [_flow({"carries_accumulator": true})],
		"want": set(),
	},
	"inlet covered": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 1001, "enters_from_above": false})],
		"want": set(),
	},
	"not flammable": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 1001, "carries_flammable": false})],
		"want": set(),
	},
	"flow not stated": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 1001, "flow_stated": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_flow({"carries_accumulator": true, "velocity_mmps": 1000}),
			_flow({"carries_accumulator": true, "velocity_mmps": 1001, "id": "flush"}),
		],
		"want": {object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"both of two": {
		"given": [
			_flow({"carries_accumulator": true, "velocity_mmps": 2500}),
			_flow({"carries_accumulator": true, "velocity_mmps": 2500, "id": "flush"}),
		],
		"want": {
			object.union(_found, {"have_mmps": 2500}),
			object.union(_found, {"subject": "flush", "run": "flush", "have_mmps": 2500}),
		},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := starts_too_fast.report with input as {"flows": tc.given}
	got == tc.want
}
