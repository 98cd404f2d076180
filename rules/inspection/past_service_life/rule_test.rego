package rules.inspection.past_service_life_test

import data.rules.inspection.past_service_life

_hose(more) := object.union(
	{"id": "H1", "life_stated": true},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_days": 1827, "need_days": 1826}

_cases := {
	"one day past": {
		"given": [_hose({"age_days": 1827, "life_days": 1826})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_hose({"age_days": 1826, "life_days": 1826})],
		"want": set(),
	},
	"below": {
		"given": [_hose({"age_days": 1825, "life_days": 1826})],
		"want": set(),
	},
	"age unknown": {
		"given": [_hose({"life_days": 1826})],
		"want": set(),
	},
	"life unknown": {
		"given": [_hose({"age_days": 1827})],
		"want": set(),
	},
	"no life stated": {
		"given": [_hose({"age_days": 1827, "life_days": 1826, "life_stated": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_hose({"age_days": 1826, "life_days": 1826}),
			_hose({"age_days": 1827, "life_days": 1826, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [
			_hose({"age_days": 1827, "life_days": 1826}),
			_hose({"age_days": 1827, "life_days": 1826, "id": "H2"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := past_service_life.report with input as {"hoses": tc.given}
	got == tc.want
}
