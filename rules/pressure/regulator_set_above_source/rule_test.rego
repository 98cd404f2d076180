package rules.pressure.regulator_set_above_source_test

import data.rules.pressure.regulator_set_above_source

# Practice, no source: a regulator only reduces.
_it(more) := object.union({"id": "R1", "source_kpa": 1000}, more)

_found(more) := object.union({"subject": "R1", "part": "R1", "set_kpa": 1001, "source_kpa": 1000}, more)

_law := {"regimes": []}

_cases := {
	"one above": {
		"line": _law,
		"given": [_it({"set_kpa": 1001})],
		"want": {_found({})},
	},
	"equal": {
		"line": _law,
		"given": [_it({"set_kpa": 1000})],
		"want": set(),
	},
	"below": {
		"line": _law,
		"given": [_it({"set_kpa": 300})],
		"want": set(),
	},
	"setting unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"two, one above": {
		"line": _law,
		"given": [_it({"set_kpa": 300}), _it({"id": "R2", "set_kpa": 1100})],
		"want": {_found({"subject": "R2", "part": "R2", "set_kpa": 1100})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := regulator_set_above_source.report with input as {"line": tc.line, "regulators": tc.given}
	got == tc.want
}
