package rules.service.whip_not_restrained_test

import data.rules.service.whip_not_restrained

# 30 CFR 56.13021, CFR 2015 annual edition (published): 3/4 in inside diameter or larger. 7 bar is practice, no
# source.
_release(more) := object.union({"id": "nitrogen", "asphyxiant": true, "restrained": false}, more)

_found := {"subject": "nitrogen", "run": "nitrogen", "bore_mm": 19, "pressure_kpa": 701}

_cases := {
	"at the bore, one past the pressure": {
		"given": [_release({"bore_mm": 19, "pressure_kpa": 701})],
		"want": {_found},
	},
	"at the pressure": {
		"given": [_release({"bore_mm": 19, "pressure_kpa": 700})],
		"want": set(),
	},
	"one under the bore": {
		"given": [_release({"bore_mm": 18, "pressure_kpa": 701})],
		"want": set(),
	},
	"wider": {
		"given": [_release({"bore_mm": 25, "pressure_kpa": 701})],
		"want": {object.union(_found, {"bore_mm": 25})},
	},
	"twin, restrained": {
		"given": [_release({"bore_mm": 19, "pressure_kpa": 701, "restrained": true})],
		"want": set(),
	},
	"bore unknown": {
		"given": [_release({"pressure_kpa": 701})],
		"want": set(),
	},
	"pressure unknown": {
		"given": [_release({"bore_mm": 19})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_release({"bore_mm": 13, "pressure_kpa": 701}),
			_release({"bore_mm": 19, "pressure_kpa": 701, "id": "air"}),
		],
		"want": {object.union(_found, {"subject": "air", "run": "air"})},
	},
	"both of two": {
		"given": [
			_release({"bore_mm": 19, "pressure_kpa": 701}),
			_release({"bore_mm": 19, "pressure_kpa": 701, "id": "air"}),
		],
		"want": {_found, object.union(_found, {"subject": "air", "run": "air"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := whip_not_restrained.report with input as {"releases": tc.given}
	got == tc.want
}
