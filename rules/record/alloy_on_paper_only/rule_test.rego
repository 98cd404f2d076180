package rules.record.alloy_on_paper_only_test

import data.rules.record.alloy_on_paper_only

_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1"}

_cases := {
	"faulty": {
		"given": [_hose({"alloy_on_paper_only": true})],
		"want": {_found},
	},
	"twin, measured or of no matter": {
		"given": [_hose({"alloy_on_paper_only": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"alloy_on_paper_only": false}), _hose({"alloy_on_paper_only": true, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"alloy_on_paper_only": true}), _hose({"alloy_on_paper_only": true, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := alloy_on_paper_only.report with input as {"hoses": tc.given}
	got == tc.want
}
