package rules.service.outside_hose_class_test

import data.rules.service.outside_hose_class

# A hose not meant for flammable liquid, as in CSB 2008-02-I-IA (published).
_service(more) := object.union(
	{
		"id": "S1",
		"hose": "H1",
		"fluid": "product",
		"ammonia": false,
		"fluid_id": "ethyl-acetate",
	},
	more,
)

_found := {"subject": "S1", "part": "H1", "fluid": "product"}

_cases := {
	"faulty": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
			}),
		],
		"want": {_found},
	},
	"twin, class covers it": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["chemicals", "water"],
				"not_for": [],
			}),
		],
		"want": set(),
	},
	"class names the fluid": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["fluid:ethyl-acetate"],
				"not_for": [],
			}),
		],
		"want": set(),
	},
	"class names another fluid": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["fluid:acetone"],
				"not_for": [],
			}),
		],
		"want": {_found},
	},
	"maker names it": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
				"maker_names_it": true,
			}),
		],
		"want": set(),
	},
	"maker does not name it": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
				"maker_names_it": false,
			}),
		],
		"want": {_found},
	},
	"no services stated": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": false,
				"only_for": [],
				"not_for": [],
			}),
		],
		"want": set(),
	},
	"kept out, judged elsewhere": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": ["flammable"],
			}),
		],
		"want": set(),
	},
	"kept out by name, judged elsewhere": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": ["fluid:ethyl-acetate"],
			}),
		],
		"want": set(),
	},
	"kept out of something else": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": ["steam"],
			}),
		],
		"want": {_found},
	},
	"class unknown": {
		"given": [
			_service({
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
			}),
		],
		"want": set(),
	},
	"no class": {
		"given": [
			_service({
				"class_known": false,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
			}),
		],
		"want": set(),
	},
	"ammonia, judged elsewhere": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
				"ammonia": true,
			}),
		],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["chemicals", "water"],
				"not_for": [],
			}),
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
				"id": "S2",
			}),
		],
		"want": {object.union(_found, {"subject": "S2"})},
	},
	"both of two": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
			}),
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"only_for_stated": true,
				"only_for": ["water"],
				"not_for": [],
				"id": "S2",
			}),
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
	got := outside_hose_class.report with input as {"services": tc.given}
	got == tc.want
}
