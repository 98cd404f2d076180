package rules.static.velocity_above_limit_test

import data.rules.static.velocity_above_limit

# 7 m/s, and speed times bore 0.5 m2/s: API RP 2003 and IEC TS 60079-32-1 (both recalled). At DN 100 that is 5
# m/s, at DN 200 2.5 m/s (computed).
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

_found := {
	"subject": "liquid",
	"run": "liquid",
	"part": "H1",
	"charge": "holds charge",
	"speed_mmps": 7001,
	"product_mm2ps": 175025,
	"speed_limit_mmps": 7000,
	"product_limit_mm2ps": 500000,
}

_cases := {
	"one past 7 m/s at DN 25": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 7001, "velocity_bore_mm2ps": 175025})],
		"want": {_found},
	},
	"twin, at 7 m/s": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 7000, "velocity_bore_mm2ps": 175000})],
		"want": set(),
	},
	"below": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 6999, "velocity_bore_mm2ps": 174975})],
		"want": set(),
	},
	"one past 0.5 m2/s at DN 100": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 5001, "velocity_bore_mm2ps": 500001})],
		"want": {object.union(_found, {"speed_mmps": 5001, "product_mm2ps": 500001})},
	},
	"at 0.5 m2/s at DN 100": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 5000, "velocity_bore_mm2ps": 500000})],
		"want": set(),
	},
	"past both": {
		"given": [_flow({"carries_accumulator": true, "velocity_mmps": 7001, "velocity_bore_mm2ps": 700100})],
		"want": {object.union(_found, {"product_mm2ps": 700100})},
	},
	"conductivity unknown, fast": {
		"given": [_flow({"velocity_mmps": 7001, "velocity_bore_mm2ps": 175025})],
		"want": {object.union(_found, {"charge": "may hold charge, its conductivity being unknown,"})},
	},
	"conductivity unknown, slow": {
		"given": [_flow({"velocity_mmps": 7000, "velocity_bore_mm2ps": 175000})],
		"want": set(),
	},
	"conducts well": {
		"given": [_flow({"carries_accumulator": false, "velocity_mmps": 7001, "velocity_bore_mm2ps": 700100})],
		"want": set(),
	},
	"speed unknown": {
		"given": [_flow({"carries_accumulator": true})],
		"want": set(),
	},
	"not flammable": {
		"given": [
			_flow({"carries_accumulator": true, "velocity_mmps": 7001, "velocity_bore_mm2ps": 175025, "carries_flammable": false}),
		],
		"want": set(),
	},
	"flow not stated, which another rule says": {
		"given": [
			_flow({"carries_accumulator": true, "velocity_mmps": 7001, "velocity_bore_mm2ps": 175025, "flow_stated": false}),
		],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_flow({"carries_accumulator": true, "velocity_mmps": 1000, "velocity_bore_mm2ps": 25000}),
			_flow({"carries_accumulator": true, "velocity_mmps": 7001, "velocity_bore_mm2ps": 175025, "id": "flush"}),
		],
		"want": {object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"both of two": {
		"given": [
			_flow({"carries_accumulator": true, "velocity_mmps": 9000, "velocity_bore_mm2ps": 225000}),
			_flow({"carries_accumulator": true, "velocity_mmps": 9000, "velocity_bore_mm2ps": 225000, "id": "flush"}),
		],
		"want": {
			object.union(_found, {"speed_mmps": 9000, "product_mm2ps": 225000}),
			object.union(_found, {"subject": "flush", "run": "flush", "speed_mmps": 9000, "product_mm2ps": 225000}),
		},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := velocity_above_limit.report with input as {"flows": tc.given}
	got == tc.want
}
