package rules.record.change_without_training_test

import data.rules.record.change_without_training

# 29 CFR 1910.119(l)(3), CFR 2015 annual edition (published).
_line(more) := object.union({"regimes": ["29 CFR 1910.119"], "change_not_in_kind": true}, more)

_cases := {
	"not trained": {
		"given": _line({"change_trained": false}),
		"want": {{"subject": "line"}},
	},
	"twin, trained": {
		"given": _line({"change_trained": true}),
		"want": set(),
	},
	"unknown": {
		"given": _line({}),
		"want": set(),
	},
	"in kind": {
		"given": _line({"change_trained": false, "change_not_in_kind": false}),
		"want": set(),
	},
	"another law": {
		"given": _line({"change_trained": false, "regimes": ["ADR"]}),
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := change_without_training.report with input as {"line": tc.given}
	got == tc.want
}
