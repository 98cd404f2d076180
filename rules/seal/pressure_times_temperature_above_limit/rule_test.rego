package rules.seal.pressure_times_temperature_above_limit_test

import data.rules.seal.pressure_times_temperature_above_limit

# Rubber sheet bears 496 bar times degrees Celsius (reference page on flat gaskets, restated).
_it(more) := object.union({"id": "S1", "pressure_times_temperature_stated": true, "pressure_times_temperature_limit_kpac": 49600}, more)

_found(more) := object.union({"subject": "S1", "seal": "S1", "have_kpac": 49601, "need_kpac": 49600}, more)

_cases := {
	"one past": {
		"given": [_it({"pressure_times_temperature_kpac": 49601})],
		"want": {_found({})},
	},
	"at the limit": {
		"given": [_it({"pressure_times_temperature_kpac": 49600})],
		"want": set(),
	},
	"below": {
		"given": [_it({"pressure_times_temperature_kpac": 49599})],
		"want": set(),
	},
	"unknown": {
		"given": [_it({})],
		"want": set(),
	},
	"no such limit": {
		"given": [_it({"pressure_times_temperature_kpac": 49601, "pressure_times_temperature_stated": false})],
		"want": set(),
	},
	"twin, spiral wound": {
		"given": [_it({"pressure_times_temperature_kpac": 49601, "pressure_times_temperature_limit_kpac": 886600})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"pressure_times_temperature_kpac": 1}), _it({"pressure_times_temperature_kpac": 49601, "id": "S2"})],
		"want": {_found({"subject": "S2", "seal": "S2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := pressure_times_temperature_above_limit.report with input as {"seals": tc.given}
	got == tc.want
}
