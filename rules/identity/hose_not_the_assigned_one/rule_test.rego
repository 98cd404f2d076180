package rules.identity.hose_not_the_assigned_one_test

import data.rules.identity.hose_not_the_assigned_one

# A hose swapped in from another trailer, as in NTSB HAZ-12-01-SUM (published).
_hose(more) := object.union(
	{"id": "H1", "assigned_stated": true},
	more,
)

_found := {"subject": "H1", "part": "H1"}

_cases := {
	"faulty": {
		"given": [_hose({"tag_matches": false})],
		"want": {_found},
	},
	"twin, the right hose": {
		"given": [_hose({"tag_matches": true})],
		"want": set(),
	},
	"tag not read": {
		"given": [_hose({})],
		"want": set(),
	},
	"no hose assigned": {
		"given": [_hose({"tag_matches": false, "assigned_stated": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"tag_matches": true}), _hose({"tag_matches": false, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"tag_matches": false}), _hose({"tag_matches": false, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hose_not_the_assigned_one.report with input as {"hoses": tc.given}
	got == tc.want
}
