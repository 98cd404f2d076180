package rules.marking.marks_unreadable_test

import data.rules.marking.marks_unreadable

_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1"}

_cases := {
	"faulty": {
		"given": [_hose({"readable": false})],
		"want": {_found},
	},
	"twin, readable": {
		"given": [_hose({"readable": true})],
		"want": set(),
	},
	"unknown": {
		"given": [_hose({})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"readable": true}), _hose({"readable": false, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"readable": false}), _hose({"readable": false, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := marks_unreadable.report with input as {"hoses": tc.given}
	got == tc.want
}
