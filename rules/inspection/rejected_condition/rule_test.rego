package rules.inspection.rejected_condition_test

import data.rules.inspection.rejected_condition

# 49 CFR 180.416(g)(1), CFR 2015 annual edition (published): any one of them rejects the hose.
_hose(more) := object.union(
	{"id": "H1", "condition_stated": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "defects": "soft-spot"}

_cases := {
	"one defect": {
		"given": [_hose({"defects": ["soft-spot"]})],
		"want": {_found},
	},
	"two defects": {
		"given": [_hose({"defects": ["kinked", "reinforcement-exposed"]})],
		"want": {object.union(_found, {"defects": "kinked, reinforcement-exposed"})},
	},
	"twin, sound": {
		"given": [_hose({"defects": []})],
		"want": set(),
	},
	"condition unknown": {
		"given": [_hose({"defects": []})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"defects": []}), _hose({"defects": ["soft-spot"], "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"defects": ["soft-spot"]}), _hose({"defects": ["soft-spot"], "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := rejected_condition.report with input as {"hoses": tc.given}
	got == tc.want
}
