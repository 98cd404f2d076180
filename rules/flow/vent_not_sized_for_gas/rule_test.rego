package rules.flow.vent_not_sized_for_gas_test

import data.rules.flow.vent_not_sized_for_gas

_flow(more) := object.union(
	{
		"id": "liquid",
		"flow_stated": true,
		"carries_flammable": true,
		"narrowest": "H1",
		"enters_from_above": false,
		"fine_filter": false,
		"gas_from_cylinders": false,
		"gas_follows": true,
		"vent_stated": false,
	},
	more,
)

_found := {"subject": "liquid", "run": "liquid"}

# API Std 2000 names the blowoff of a pressure transfer (recalled).
_cases := {
	"nobody said what the vent passes": {
		"given": [_flow({})],
		"want": {_found},
	},
	"twin, stated": {
		"given": [_flow({"vent_stated": true, "vent_mlps": 500000})],
		"want": set(),
	},
	"stated as nothing is a matter of the other rule": {
		"given": [_flow({"vent_stated": true, "vent_mlps": 0})],
		"want": set(),
	},
	"how much gas follows does not matter": {
		"given": [_flow({"gas_follows_mlps": 1})],
		"want": {_found},
	},
	"no gas follows": {
		"given": [_flow({"gas_follows": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_flow({"vent_stated": true}), _flow({"id": "other"})],
		"want": {{"subject": "other", "run": "other"}},
	},
	"both of two": {
		"given": [_flow({}), _flow({"id": "other"})],
		"want": {_found, {"subject": "other", "run": "other"}},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := vent_not_sized_for_gas.report with input as {"flows": tc.given}
	got == tc.want
}
