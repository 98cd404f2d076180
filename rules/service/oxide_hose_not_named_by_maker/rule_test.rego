package rules.service.oxide_hose_not_named_by_maker_test

import data.rules.service.oxide_hose_not_named_by_maker

# 46 CFR 154.1725 and 153.530 (published), written for ships.
_service(more) := object.union(
	{"id": "S1", "hose": "H1", "fluid": "product"},
	more,
)

_found := {"subject": "S1", "part": "H1", "fluid": "product"}

_cases := {
	"faulty": {
		"given": [_service({"fluid_id": "ethylene-oxide", "maker_names_it": false})],
		"want": {_found},
	},
	"propylene oxide": {
		"given": [_service({"fluid_id": "propylene-oxide", "maker_names_it": false})],
		"want": {_found},
	},
	"twin, named": {
		"given": [_service({"fluid_id": "ethylene-oxide", "maker_names_it": true})],
		"want": set(),
	},
	"unknown": {
		"given": [_service({"fluid_id": "ethylene-oxide"})],
		"want": set(),
	},
	"another fluid": {
		"given": [_service({"fluid_id": "ethanol", "maker_names_it": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_service({"fluid_id": "ethylene-oxide", "maker_names_it": true}),
			_service({"fluid_id": "ethylene-oxide", "maker_names_it": false, "id": "S2"}),
		],
		"want": {object.union(_found, {"subject": "S2"})},
	},
	"both of two": {
		"given": [
			_service({"fluid_id": "ethylene-oxide", "maker_names_it": false}),
			_service({"fluid_id": "ethylene-oxide", "maker_names_it": false, "id": "S2"}),
		],
		"want": {_found, object.union(_found, {"subject": "S2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := oxide_hose_not_named_by_maker.report with input as {"services": tc.given}
	got == tc.want
}
