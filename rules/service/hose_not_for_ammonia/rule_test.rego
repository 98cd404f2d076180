package rules.service.hose_not_for_ammonia_test

import data.rules.service.hose_not_for_ammonia

# A hose made for liquefied petroleum gas on ammonia, as in NTSB HAZ-12-01-SUM (published).
_hose(more) := object.union(
	{"id": "H1", "carries_ammonia": true},
	more,
)

_found := {"subject": "H1", "part": "H1"}

_cases := {
	"faulty": {
		"given": [_hose({"marked_ammonia": false})],
		"want": {_found},
	},
	"twin, marked": {
		"given": [_hose({"marked_ammonia": true})],
		"want": set(),
	},
	"marks unknown": {
		"given": [_hose({})],
		"want": set(),
	},
	"no ammonia": {
		"given": [_hose({"marked_ammonia": false, "carries_ammonia": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"marked_ammonia": true}), _hose({"marked_ammonia": false, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"marked_ammonia": false}), _hose({"marked_ammonia": false, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hose_not_for_ammonia.report with input as {"hoses": tc.given}
	got == tc.want
}
