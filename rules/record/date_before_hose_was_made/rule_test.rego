package rules.record.date_before_hose_was_made_test

import data.rules.record.date_before_hose_was_made

# Practice, no source: a record older than the hose belongs to another.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "what": "pressure test"}, more)

_law := {"regimes": []}

_cases := {
	"test before it was made": {
		"line": _law,
		"given": [_it({"days_since_test": 132, "age_days": 100})],
		"want": {_found({})},
	},
	"in the month it was made": {
		"line": _law,
		"given": [_it({"days_since_test": 131, "age_days": 100})],
		"want": set(),
	},
	"later": {
		"line": _law,
		"given": [_it({"days_since_test": 50, "age_days": 100})],
		"want": set(),
	},
	"age unknown": {
		"line": _law,
		"given": [_it({"days_since_test": 132})],
		"want": set(),
	},
	"inspection before it was made": {
		"line": _law,
		"given": [_it({"days_since_inspection": 132, "age_days": 100})],
		"want": {_found({"what": "visual inspection"})},
	},
	"measurement before it was made": {
		"line": _law,
		"given": [_it({"days_since_resistance_test": 132, "age_days": 100})],
		"want": {_found({"what": "resistance measurement"})},
	},
	"no record": {
		"line": _law,
		"given": [_it({"age_days": 100})],
		"want": set(),
	},
	"two, one wrong": {
		"line": _law,
		"given": [_it({"days_since_test": 90, "age_days": 100}), _it({"id": "H2", "days_since_test": 400, "age_days": 100})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"all three": {
		"line": _law,
		"given": [_it({"days_since_test": 200, "days_since_inspection": 200, "age_days": 100, "days_since_resistance_test": 200})],
		"want": {_found({}), _found({"what": "visual inspection"}), _found({"what": "resistance measurement"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := date_before_hose_was_made.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
