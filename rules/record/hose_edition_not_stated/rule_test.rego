package rules.record.hose_edition_not_stated_test

import data.rules.record.hose_edition_not_stated

# SAE J517 (published): two wire braids, other pressures since 2006 under the same type.
_hose(more) := object.union(
	{"id": "H1", "edition_matters": true},
	more,
)

_found := {"subject": "H1", "part": "H1"}

_cases := {
	"faulty": {
		"given": [_hose({"edition_stated": false})],
		"want": {_found},
	},
	"twin, stated": {
		"given": [_hose({"edition_stated": true})],
		"want": set(),
	},
	"editions agree": {
		"given": [_hose({"edition_stated": false, "edition_matters": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"edition_stated": true}), _hose({"edition_stated": false, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"edition_stated": false}), _hose({"edition_stated": false, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hose_edition_not_stated.report with input as {"hoses": tc.given}
	got == tc.want
}
