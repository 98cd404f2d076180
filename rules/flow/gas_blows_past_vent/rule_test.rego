package rules.flow.gas_blows_past_vent_test

import data.rules.flow.gas_blows_past_vent

# API Std 2000 names the blowoff of a pressure transfer (recalled). Nitrogen at 3 bar behind 20 m of DN 50 brings some
# 0.5 m3 of free gas a second.
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
		"vent_stated": true,
		"vent_mlps": 500000,
	},
	more,
)

_found := {
	"subject": "liquid",
	"run": "liquid",
	"have_mlps": 500000,
	"need_mlps": 500001,
}

_cases := {
	"one past what the vent passes": {
		"given": [_flow({"gas_follows_mlps": 500001})],
		"want": {_found},
	},
	"just what it passes": {
		"given": [_flow({"gas_follows_mlps": 500000})],
		"want": set(),
	},
	"twin, a larger vent": {
		"given": [_flow({"gas_follows_mlps": 500001, "vent_mlps": 500002})],
		"want": set(),
	},
	"far more": {
		"given": [_flow({"gas_follows_mlps": 900000})],
		"want": {object.union(_found, {"need_mlps": 900000})},
	},
	"gas unknown": {
		"given": [_flow({})],
		"want": set(),
	},
	"vent not stated": {
		"given": [_flow({"gas_follows_mlps": 500001, "vent_stated": false})],
		"want": set(),
	},
	"no gas follows": {
		"given": [_flow({"gas_follows": false, "gas_follows_mlps": 900000})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_flow({"gas_follows_mlps": 1}),
			_flow({"gas_follows_mlps": 500001, "id": "other"}),
		],
		"want": {object.union(_found, {"subject": "other", "run": "other"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := gas_blows_past_vent.report with input as {"flows": tc.given}
	got == tc.want
}
