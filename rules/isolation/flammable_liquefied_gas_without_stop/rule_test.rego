package rules.isolation.flammable_liquefied_gas_without_stop_test

import data.rules.isolation.flammable_liquefied_gas_without_stop

# Practice, no source: a stop outside the hazard zone.
_found(more) := object.union({"subject": "line"}, more)

_cases := {
	"no stop": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": true, "carries_toxic": false, "hazard_in_reach": false, "passive_shutoff": false, "remote_stop": false, "automatic_stop": false},
		"want": {_found({})},
	},
	"remote stop": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": true, "carries_toxic": false, "hazard_in_reach": false, "passive_shutoff": false, "remote_stop": true, "automatic_stop": false},
		"want": set(),
	},
	"automatic stop": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": true, "carries_toxic": false, "hazard_in_reach": false, "passive_shutoff": false, "remote_stop": false, "automatic_stop": true},
		"want": set(),
	},
	"remote unknown": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": true, "carries_toxic": false, "hazard_in_reach": false, "passive_shutoff": false, "automatic_stop": false},
		"want": set(),
	},
	"automatic unknown": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": true, "carries_toxic": false, "hazard_in_reach": false, "passive_shutoff": false, "remote_stop": false},
		"want": set(),
	},
	"not flammable": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": false, "carries_toxic": false, "hazard_in_reach": false, "passive_shutoff": false, "remote_stop": false, "automatic_stop": false},
		"want": set(),
	},
	"not liquefied": {
		"line": {"regimes": [], "carries_liquefied_gas": false, "carries_flammable": true, "carries_toxic": false, "hazard_in_reach": false, "passive_shutoff": false, "remote_stop": false, "automatic_stop": false},
		"want": set(),
	},
	"toxic is judged elsewhere": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": true, "carries_toxic": true, "hazard_in_reach": false, "passive_shutoff": false, "remote_stop": false, "automatic_stop": false},
		"want": set(),
	},
	"hazard in reach is judged elsewhere": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": true, "carries_toxic": false, "hazard_in_reach": true, "passive_shutoff": false, "remote_stop": false, "automatic_stop": false},
		"want": set(),
	},
	"passive shut-off": {
		"line": {"regimes": [], "carries_liquefied_gas": true, "carries_flammable": true, "carries_toxic": false, "hazard_in_reach": false, "passive_shutoff": true, "remote_stop": false, "automatic_stop": false},
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := flammable_liquefied_gas_without_stop.report with input as {"line": tc.line}
	got == tc.want
}
