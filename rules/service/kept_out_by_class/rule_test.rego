package rules.service.kept_out_by_class_test

import data.rules.service.kept_out_by_class

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

_found := {"subject": "S1", "part": "H1", "fluid": "product", "excluded": "flammable"}

_cases := {
	"faulty": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"not_for": ["flammable", "steam"],
			}),
		],
		"want": {_found},
	},
	"two words": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"not_for": ["flammable", "chemicals"],
			}),
		],
		"want": {object.union(_found, {"excluded": "chemicals, flammable"})},
	},
	"the fluid by name": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"not_for": ["fluid:ethyl-acetate"],
			}),
		],
		"want": {object.union(_found, {"excluded": "fluid:ethyl-acetate"})},
	},
	"another fluid by name": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"not_for": ["fluid:acetone"],
			}),
		],
		"want": set(),
	},
	"even if the maker names it": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"not_for": ["flammable", "steam"],
				"maker_names_it": true,
			}),
		],
		"want": {_found},
	},
	"twin, nothing excluded": {
		"given": [_service({"class_known": true, "words": ["chemicals", "flammable"], "not_for": []})],
		"want": set(),
	},
	"class unknown": {
		"given": [_service({"words": ["chemicals", "flammable"], "not_for": ["flammable", "steam"]})],
		"want": set(),
	},
	"no class": {
		"given": [
			_service({
				"class_known": false,
				"words": ["chemicals", "flammable"],
				"not_for": ["flammable", "steam"],
			}),
		],
		"want": set(),
	},
	"ammonia, judged elsewhere": {
		"given": [
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"not_for": ["flammable", "steam"],
				"ammonia": true,
			}),
		],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_service({"class_known": true, "words": ["chemicals", "flammable"], "not_for": []}),
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"not_for": ["flammable", "steam"],
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
				"not_for": ["flammable", "steam"],
			}),
			_service({
				"class_known": true,
				"words": ["chemicals", "flammable"],
				"not_for": ["flammable", "steam"],
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
	got := kept_out_by_class.report with input as {"services": tc.given}
	got == tc.want
}
