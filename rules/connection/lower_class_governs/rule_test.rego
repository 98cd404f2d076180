package rules.connection.lower_class_governs_test

import data.rules.connection.lower_class_governs

_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet"}

_cases := {
	"faulty": {"given": [_joint({"class": "drilling-same"})], "want": {_found}},
	"twin, put right": {"given": [_joint({"class": "same"})], "want": set()},
	"unknown": {"given": [_joint({})], "want": set()},
	"open hatch, not a joint": {"given": [_joint({"class": "drilling-same", "open_point": true})], "want": set()},
	"the second of two joints": {
		"given": [
			_joint({"class": "same"}),
			_joint({"class": "drilling-same", "id": "J2"}),
		],
		"want": {object.union(_found, {"subject": "J2"})},
	},
	"no joints": {"given": [], "want": set()},
	"question does not arise": {"given": [_joint({"class": "none"})], "want": set()},
	"differing drilling is a stop elsewhere": {"given": [_joint({"class": "differs"})], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := lower_class_governs.report with input as {"joints": tc.given}
	got == tc.want
}
