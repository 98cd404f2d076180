package rules.inspection.test_below_waterfront_gas_law_test

import data.rules.inspection.test_below_waterfront_gas_law

# 33 CFR 127.1407, CFR 2015 annual edition (published): 1.1 times for at least 30 minutes.
_it(more) := object.union({"id": "H1", "rated_kpa": 1000}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "law": "33 CFR 127.1407", "test_kpa": 1099, "rated_kpa": 1000}, more)

_law := {"regimes": ["33 CFR 127.1407"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1099})],
		"want": {_found({})},
	},
	"exactly that much": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1100})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1101})],
		"want": set(),
	},
	"test pressure unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"far below": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 500})],
		"want": {_found({"test_kpa": 500})},
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"test_pressure_kpa": 1099})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({"test_pressure_kpa": 1099})],
		"want": set(),
	},
	"two hoses, one short": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 1100}), _it({"test_pressure_kpa": 1098, "id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2", "test_kpa": 1098})},
	},
	"under 33 CFR 127.1102": {
		"line": {"regimes": ["ADR", "33 CFR 127.1102"]},
		"given": [_it({"test_pressure_kpa": 1099})],
		"want": {_found({"law": "33 CFR 127.1102"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_below_waterfront_gas_law.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
