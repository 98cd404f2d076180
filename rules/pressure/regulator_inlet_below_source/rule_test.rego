package rules.pressure.regulator_inlet_below_source_test

import data.rules.pressure.regulator_inlet_below_source

# Outlets CGA 580 and 680 stand for 3000 and 5500 psi (CGA V-1, recalled): 20684 and 37921.2 kPa, demand rounded up.
_regulator(id, rated, source) := {"id": id, "inlet_rated_kpa": rated, "source_kpa": source}

_found(id, have, need) := {"subject": id, "part": id, "have_kpa": have, "need_kpa": need}

_cases := {
	"spare rating": {"given": [_regulator("PR1", 23000, 20000)], "want": set()},
	"exactly equal": {"given": [_regulator("PR1", 20000, 20000)], "want": set()},
	"one short": {"given": [_regulator("PR1", 19999, 20000)], "want": {_found("PR1", 19999, 20000)}},
	"3000 psi regulator on a 5500 psi outlet": {
		"given": [_regulator("PR1", 20684, 37922)],
		"want": {_found("PR1", 20684, 37922)},
	},
	"twin, 5500 psi regulator": {"given": [_regulator("PR1", 37922, 37922)], "want": set()},
	"rating unknown": {"given": [{"id": "PR1", "source_kpa": 20000}], "want": set()},
	"source unknown": {"given": [{"id": "PR1", "inlet_rated_kpa": 1}], "want": set()},
	"no regulators": {"given": [], "want": set()},
	"second of two": {
		"given": [_regulator("PR1", 20000, 20000), _regulator("PR2", 1000, 1001)],
		"want": {_found("PR2", 1000, 1001)},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := regulator_inlet_below_source.report with input as {"regulators": tc.given}
	got == tc.want
}
