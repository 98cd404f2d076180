package rules.marking.gas_ship_pressure_not_marked_test

import data.rules.marking.gas_ship_pressure_not_marked

# 46 CFR 38.15-5, undated public copy (published).
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_law := {"regimes": ["46 CFR 38.15-5"]}

_cases := {
	"not marked": {
		"line": _law,
		"given": [_it({"marked_pressure": false})],
		"want": {_found({})},
	},
	"marked": {
		"line": _law,
		"given": [_it({"marked_pressure": true})],
		"want": set(),
	},
	"marks not stated": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"marked_pressure": false})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"marked_pressure": false})],
		"want": set(),
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "46 CFR 38.15-5"]},
		"given": [_it({"marked_pressure": false})],
		"want": {_found({})},
	},
	"two hoses, one marked": {
		"line": _law,
		"given": [_it({"marked_pressure": true}), _it({"marked_pressure": false, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := gas_ship_pressure_not_marked.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
