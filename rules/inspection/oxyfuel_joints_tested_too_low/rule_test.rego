package rules.inspection.oxyfuel_joints_tested_too_low_test

import data.rules.inspection.oxyfuel_joints_tested_too_low

# 29 CFR 1910.253(e)(5)(v), CFR 2015 annual edition (published): the greater of 300 psi = 2068.4 kPa and twice
# normal pressure.
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_kpa": 2067, "need_kpa": 2068}, more)

_law := {"regimes": ["29 CFR 1910.253"]}

_cases := {
	"one below 300 psi": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2067})],
		"more": {"fluids": [{"id": "oxygen", "duty_kpa": 500}]},
		"want": {_found({})},
	},
	"at 300 psi": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2068})],
		"more": {"fluids": [{"id": "oxygen", "duty_kpa": 500}]},
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2069})],
		"more": {"fluids": [{"id": "oxygen", "duty_kpa": 500}]},
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"fluids": [{"id": "oxygen", "duty_kpa": 500}]},
		"want": set(),
	},
	"one below twice the pressure": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2399})],
		"more": {"fluids": [{"id": "oxygen", "duty_kpa": 1200}]},
		"want": {_found({"have_kpa": 2399, "need_kpa": 2400})},
	},
	"at twice the pressure": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2400})],
		"more": {"fluids": [{"id": "oxygen", "duty_kpa": 1200}]},
		"want": set(),
	},
	"normal pressure unknown": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 2067})],
		"more": {"fluids": [{"id": "oxygen"}]},
		"want": {_found({})},
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"test_pressure_kpa": 2067})],
		"more": {"fluids": [{"id": "oxygen", "duty_kpa": 500}]},
		"want": set(),
	},
	"two, one short": {
		"line": _law,
		"given": [_it({"test_pressure_kpa": 3000}), _it({"id": "H2", "test_pressure_kpa": 1000})],
		"more": {"fluids": [{"id": "oxygen", "duty_kpa": 500}]},
		"want": {_found({"subject": "H2", "part": "H2", "have_kpa": 1000})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := oxyfuel_joints_tested_too_low.report with input as object.union(tc.more, {"line": tc.line, "hoses": tc.given})
	got == tc.want
}
