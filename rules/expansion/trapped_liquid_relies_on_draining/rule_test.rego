package rules.expansion.trapped_liquid_relies_on_draining_test

import data.rules.expansion.trapped_liquid_relies_on_draining

# API Std 521 (2007) 5.14.4.1 exempts what is drained under control (published).
_section(more) := object.union(
	{
		"id": "V1 to V2",
		"run": "liquid",
		"from": "V1",
		"to": "V2",
		"liquid": true,
		"relieved": false,
		"drained": true,
		"warmed": true,
		"carries_ammonia": false,
		"carries_lpg": false,
		"weakest": "H1",
	},
	more,
)

_found := {"subject": "V1 to V2", "from": "V1", "to": "V2"}

_cases := {
	"one past the rating": {
		"given": [_section({"blocked_kpa": 1601, "weakest_kpa": 1600})],
		"want": {_found},
	},
	"at the rating": {
		"given": [_section({"blocked_kpa": 1600, "weakest_kpa": 1600})],
		"want": set(),
	},
	"below the rating": {
		"given": [_section({"blocked_kpa": 1599, "weakest_kpa": 1600})],
		"want": set(),
	},
	"expansion unknown": {
		"given": [_section({"weakest_kpa": 1600})],
		"want": {_found},
	},
	"rating unknown": {
		"given": [_section({"blocked_kpa": 100})],
		"want": {_found},
	},
	"nothing known": {
		"given": [_section({})],
		"want": {_found},
	},
	"twin, relieved": {
		"given": [_section({"relieved": true})],
		"want": set(),
	},
	"not emptied, which is the matter of another rule": {
		"given": [_section({"drained": false})],
		"want": set(),
	},
	"gas": {
		"given": [_section({"liquid": false})],
		"want": set(),
	},
	"never warmer than filled": {
		"given": [_section({"warmed": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_section({"blocked_kpa": 1600, "weakest_kpa": 1600}), _section({"id": "V2 to V3"})],
		"want": {object.union(_found, {"subject": "V2 to V3"})},
	},
	"both of two": {
		"given": [_section({}), _section({"id": "V2 to V3"})],
		"want": {_found, object.union(_found, {"subject": "V2 to V3"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := trapped_liquid_relies_on_draining.report with input as {"sections": tc.given}
	got == tc.want
}
