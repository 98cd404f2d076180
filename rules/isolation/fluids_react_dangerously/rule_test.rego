package rules.isolation.fluids_react_dangerously_test

import data.rules.isolation.fluids_react_dangerously

# Sulfuric acid and sodium hypochlorite give chlorine: CSB case study of January 2018 (published).
_meeting(more) := object.union(
	{"id": "M1", "a": "acid", "b": "hypochlorite", "air_pad": false, "forbidden_pad": false},
	more,
)

_found := {
	"subject": "M1",
	"a": "acid",
	"b": "hypochlorite",
	"place": "in what the last job left behind",
	"outcome": "chlorine",
}

_cases := {
	"left behind": {
		"given": [_meeting({"where": "previous", "hazardous": true, "product": "chlorine"})],
		"want": {_found},
	},
	"pad": {
		"given": [_meeting({"where": "pad", "hazardous": true, "product": "chlorine"})],
		"want": {object.union(_found, {"place": "under the pad gas"})},
	},
	"pad gas forbidden, judged elsewhere": {
		"given": [
			_meeting({"where": "pad", "hazardous": true, "product": "chlorine", "forbidden_pad": true}),
		],
		"want": set(),
	},
	"air as pad gas, judged elsewhere": {
		"given": [_meeting({"where": "pad", "hazardous": true, "product": "chlorine", "air_pad": true})],
		"want": set(),
	},
	"flush": {
		"given": [_meeting({"where": "flush", "hazardous": true, "product": "chlorine"})],
		"want": {object.union(_found, {"place": "in the line, one after the other"})},
	},
	"in the vessel, judged elsewhere": {
		"given": [_meeting({"where": "target", "hazardous": true, "product": "chlorine"})],
		"want": set(),
	},
	"test": {
		"given": [_meeting({"where": "test", "hazardous": true, "product": "chlorine"})],
		"want": {object.union(_found, {"place": "when the line is tested"})},
	},
	"product not named": {
		"given": [_meeting({"where": "previous", "hazardous": true, "product": ""})],
		"want": {object.union(_found, {"outcome": "a dangerous reaction"})},
	},
	"in reach, judged elsewhere": {
		"given": [_meeting({"where": "in-reach", "hazardous": true, "product": "chlorine"})],
		"want": set(),
	},
	"twin, harmless": {
		"given": [_meeting({"where": "previous", "hazardous": false, "product": "chlorine"})],
		"want": set(),
	},
	"unknown": {
		"given": [_meeting({"where": "previous", "product": "chlorine"})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_meeting({"where": "previous", "hazardous": false, "product": "chlorine"}),
			_meeting({"where": "previous", "hazardous": true, "product": "chlorine", "id": "M2"}),
		],
		"want": {object.union(_found, {"subject": "M2"})},
	},
	"both of two": {
		"given": [
			_meeting({"where": "previous", "hazardous": true, "product": "chlorine"}),
			_meeting({"where": "previous", "hazardous": true, "product": "chlorine", "id": "M2"}),
		],
		"want": {_found, object.union(_found, {"subject": "M2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := fluids_react_dangerously.report with input as {"meetings": tc.given}
	got == tc.want
}
