package rules.marking.burst_marked_against_marine_law_test

import data.rules.marking.burst_marked_against_marine_law

# 33 CFR 154.500(g), CFR 2015 annual edition (published).
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_cases := {
	"marked": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_it({"marked_burst_or_test": true})],
		"want": {_found({})},
	},
	"twin, not marked": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_it({"marked_burst_or_test": false})],
		"want": set(),
	},
	"unknown": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": []},
		"given": [_it({"marked_burst_or_test": true})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_it({"marked_burst_or_test": false}), _it({"id": "H2", "marked_burst_or_test": true})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := burst_marked_against_marine_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
