package rules.pressure.burst_below_chemical_cargo_law_test

import data.rules.pressure.burst_below_chemical_cargo_law

# 46 CFR 153.940, CFR 2015 annual edition (published): at least 5152 kPa.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 5151, "need_kpa": 5152}, more)

_law := {"regimes": ["46 CFR 153.940"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"burst_kpa": 5151})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"burst_kpa": 5152})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"burst_kpa": 5153})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"burst_kpa": 5151})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"burst_kpa": 5151})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"burst_kpa": 5152}), _it({"burst_kpa": 5150, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 5150})},
	},
	"one law of two": {
		"line": {"regimes": ["ADR", "46 CFR 153.940"]},
		"given": [_it({"burst_kpa": 5151})],
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := burst_below_chemical_cargo_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
