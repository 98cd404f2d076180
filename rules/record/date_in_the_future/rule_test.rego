package rules.record.date_in_the_future_test

import data.rules.record.date_in_the_future

# Practice, no source: a mistyped year must not pass as a fresh test.
_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1", "what": "pressure test"}

_cases := {
	"test one day ahead": {
		"given": [_hose({"days_since_test": -1})],
		"want": {_found},
	},
	"inspection ahead": {
		"given": [_hose({"days_since_test": 0, "days_since_inspection": -1})],
		"want": {object.union(_found, {"what": "visual inspection"})},
	},
	"measurement ahead": {
		"given": [_hose({"days_since_resistance_test": -300})],
		"want": {object.union(_found, {"what": "resistance measurement"})},
	},
	"made ahead": {
		"given": [_hose({"days_since_test": 1, "age_days": -1})],
		"want": {object.union(_found, {"what": "manufacture"})},
	},
	"two dates ahead": {
		"given": [_hose({"days_since_test": -1, "age_days": -1})],
		"want": {object.union(_found, {"what": "manufacture"}), _found},
	},
	"twin, tested today": {
		"given": [
			_hose({
				"days_since_test": 0,
				"age_days": 0,
				"days_since_inspection": 0,
				"days_since_resistance_test": 0,
			}),
		],
		"want": set(),
	},
	"no dates": {
		"given": [_hose({})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_hose({
				"days_since_test": 0,
				"age_days": 0,
				"days_since_inspection": 0,
				"days_since_resistance_test": 0,
			}),
			_hose({"days_since_test": -1, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [_hose({"days_since_test": -1}), _hose({"days_since_test": -1, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := date_in_the_future.report with input as {"hoses": tc.given}
	got == tc.want
}
