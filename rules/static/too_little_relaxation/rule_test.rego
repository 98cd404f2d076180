package rules.static.too_little_relaxation_test

import data.rules.static.too_little_relaxation

# 30 s behind a fine filter: NFPA 77 and API RP 2003 (both recalled).
_flow(more) := object.union(
	{
		"id": "liquid",
		"flow_stated": true,
		"carries_flammable": true,
		"narrowest": "H1",
		"enters_from_above": false,
		"fine_filter": true,
		"gas_from_cylinders": false,
	},
	more,
)

_found := {
	"subject": "liquid",
	"run": "liquid",
	"charge": "holds charge",
	"have_ms": 29999,
	"need_ms": 30000,
}

_cases := {
	"one short": {
		"given": [_flow({"carries_accumulator": true, "residence_ms": 29999})],
		"want": {_found},
	},
	"at the limit": {
		"given": [_flow({"carries_accumulator": true, "residence_ms": 30000})],
		"want": set(),
	},
	"more": {
		"given": [_flow({"carries_accumulator": true, "residence_ms": 30001})],
		"want": set(),
	},
	"twin, a minute": {
		"given": [_flow({"carries_accumulator": true, "residence_ms": 60000})],
		"want": set(),
	},
	"conductivity unknown": {
		"given": [_flow({"residence_ms": 29999})],
		"want": {object.union(_found, {"charge": "may hold charge, its conductivity being unknown,"})},
	},
	"conducts well": {
		"given": [_flow({"carries_accumulator": false, "residence_ms": 29999})],
		"want": set(),
	},
	"time unknown": {
		"given": [_flow({"carries_accumulator": true})],
		"want": set(),
	},
	"no fine filter": {
		"given": [_flow({"carries_accumulator": true, "residence_ms": 29999, "fine_filter": false})],
		"want": set(),
	},
	"not flammable": {
		"given": [_flow({"carries_accumulator": true, "residence_ms": 29999, "carries_flammable": false})],
		"want": set(),
	},
	"flow not stated": {
		"given": [_flow({"carries_accumulator": true, "residence_ms": 29999, "flow_stated": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_flow({"carries_accumulator": true, "residence_ms": 30000}),
			_flow({"carries_accumulator": true, "residence_ms": 29999, "id": "flush"}),
		],
		"want": {object.union(_found, {"subject": "flush", "run": "flush"})},
	},
	"both of two": {
		"given": [
			_flow({"carries_accumulator": true, "residence_ms": 8000}),
			_flow({"carries_accumulator": true, "residence_ms": 8000, "id": "flush"}),
		],
		"want": {
			object.union(_found, {"have_ms": 8000}),
			object.union(_found, {"subject": "flush", "run": "flush", "have_ms": 8000}),
		},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := too_little_relaxation.report with input as {"flows": tc.given}
	got == tc.want
}
