package rules.seal.hot_and_high_together_test

import data.rules.seal.hot_and_high_together

# Practice, no source: half of both is a screening figure.
_it(more) := object.union({"id": "S1", "pressure_times_temperature_stated": false}, more)

_found(more) := object.union({"subject": "S1", "seal": "S1", "pressure_permille": 501, "temperature_permille": 501}, more)

_cases := {
	"past half of both": {
		"given": [_it({"pressure_share_permille": 501, "temperature_share_permille": 501})],
		"want": {_found({})},
	},
	"pressure at half": {
		"given": [_it({"pressure_share_permille": 500, "temperature_share_permille": 501})],
		"want": set(),
	},
	"temperature at half": {
		"given": [_it({"pressure_share_permille": 501, "temperature_share_permille": 500})],
		"want": set(),
	},
	"below": {
		"given": [_it({"pressure_share_permille": 499, "temperature_share_permille": 499})],
		"want": set(),
	},
	"pressure unknown": {
		"given": [_it({"temperature_share_permille": 501})],
		"want": set(),
	},
	"temperature unknown": {
		"given": [_it({"pressure_share_permille": 501})],
		"want": set(),
	},
	"judged by the product": {
		"given": [_it({"pressure_share_permille": 501, "temperature_share_permille": 501, "pressure_times_temperature_stated": true})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"pressure_share_permille": 1, "temperature_share_permille": 1}), _it({"pressure_share_permille": 501, "temperature_share_permille": 501, "id": "S2"})],
		"want": {_found({"subject": "S2", "seal": "S2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hot_and_high_together.report with input as {"seals": tc.given}
	got == tc.want
}
