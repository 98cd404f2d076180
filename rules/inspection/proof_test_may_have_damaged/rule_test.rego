package rules.inspection.proof_test_may_have_damaged_test

import data.rules.inspection.proof_test_may_have_damaged

# 46 CFR 38.15-5 and 154.562 (published): at most two fifths of burst, 2000 of 5000 kPa.
_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1", "test_kpa": 2001, "burst_kpa": 5000}

_cases := {
	"one past": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [_hose({"test_pressure_kpa": 2001, "burst_kpa": 5000})],
		"want": {_found},
	},
	"twin, at the limit": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [_hose({"test_pressure_kpa": 2000, "burst_kpa": 5000})],
		"want": set(),
	},
	"below": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [_hose({"test_pressure_kpa": 1999, "burst_kpa": 5000})],
		"want": set(),
	},
	"gas ship": {
		"line": {"regimes": ["46 CFR 154.562"]},
		"given": [_hose({"test_pressure_kpa": 2001, "burst_kpa": 5000})],
		"want": {_found},
	},
	"test unknown": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [_hose({"burst_kpa": 5000})],
		"want": set(),
	},
	"burst unknown": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [_hose({"test_pressure_kpa": 2001})],
		"want": set(),
	},
	"other law": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_hose({"test_pressure_kpa": 2001, "burst_kpa": 5000})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [
			_hose({"test_pressure_kpa": 2000, "burst_kpa": 5000}),
			_hose({"test_pressure_kpa": 2001, "burst_kpa": 5000, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [
			_hose({"test_pressure_kpa": 2001, "burst_kpa": 5000}),
			_hose({"test_pressure_kpa": 2001, "burst_kpa": 5000, "id": "H2"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := proof_test_may_have_damaged.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
