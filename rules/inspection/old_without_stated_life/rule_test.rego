package rules.inspection.old_without_stated_life_test

import data.rules.inspection.old_without_stated_life

# UFC 4-390-01 (2003) B.8 (published): 12 years for rubber hose outside critical use.
_hose(more) := object.union(
	{"id": "H1", "life_stated": false},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_days": 4384, "need_days": 4383}

_cases := {
	"one day past": {
		"given": [_hose({"age_days": 4384})],
		"want": {_found},
	},
	"at the limit": {
		"given": [_hose({"age_days": 4383})],
		"want": set(),
	},
	"below": {
		"given": [_hose({"age_days": 4382})],
		"want": set(),
	},
	"age unknown": {
		"given": [_hose({})],
		"want": set(),
	},
	"twin, life stated": {
		"given": [_hose({"age_days": 4384, "life_stated": true})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"age_days": 4384, "life_stated": true}), _hose({"age_days": 4384, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"age_days": 4384}), _hose({"age_days": 4384, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := old_without_stated_life.report with input as {"hoses": tc.given}
	got == tc.want
}
