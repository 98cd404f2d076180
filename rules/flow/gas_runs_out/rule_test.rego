package rules.flow.gas_runs_out_test

import data.rules.flow.gas_runs_out

# Moving 1 m3 at 3 bar with 50 L cylinders of 200 bar takes 0.440 of one; 3 m3 take 1.32 (computed with the Span
# et al. 2000 equation for nitrogen).
_flow(more) := object.union(
	{
		"id": "liquid",
		"flow_stated": true,
		"carries_flammable": true,
		"narrowest": "H1",
		"enters_from_above": false,
		"fine_filter": false,
		"gas_from_cylinders": true,
	},
	more,
)

_found := {
	"subject": "liquid",
	"run": "liquid",
	"have_ratio_permille": 1320,
	"need_ratio_permille": 1000,
}

_cases := {
	"3 m3": {
		"given": [_flow({"cylinders_needed_permille": 1320})],
		"want": {_found},
	},
	"one past": {
		"given": [_flow({"cylinders_needed_permille": 1001})],
		"want": {object.union(_found, {"have_ratio_permille": 1001})},
	},
	"exactly one": {
		"given": [_flow({"cylinders_needed_permille": 1000})],
		"want": set(),
	},
	"below": {
		"given": [_flow({"cylinders_needed_permille": 999})],
		"want": set(),
	},
	"twin, 1 m3": {
		"given": [_flow({"cylinders_needed_permille": 440})],
		"want": set(),
	},
	"unknown": {
		"given": [_flow({})],
		"want": set(),
	},
	"gas from the mains": {
		"given": [_flow({"cylinders_needed_permille": 1320, "gas_from_cylinders": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_flow({"cylinders_needed_permille": 440}),
			_flow({"cylinders_needed_permille": 1320, "id": "flush"}),
		],
		"want": {object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"both of two": {
		"given": [
			_flow({"cylinders_needed_permille": 1320}),
			_flow({"cylinders_needed_permille": 1320, "id": "flush"}),
		],
		"want": {_found, object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := gas_runs_out.report with input as {"flows": tc.given}
	got == tc.want
}
