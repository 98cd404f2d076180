package rules.pressure.proof_test_below_working_pressure_test

import data.rules.pressure.proof_test_below_working_pressure

_hose(id, tested, rated) := {"id": id, "test_pressure_kpa": tested, "rated_kpa": rated}

_found(id, have, need) := {"subject": id, "part": id, "have_kpa": have, "need_kpa": need}

_cases := {
	"above": {"given": [_hose("H1", 1500, 1000)], "want": set()},
	"exactly equal": {"given": [_hose("H1", 1000, 1000)], "want": set()},
	"one short": {"given": [_hose("H1", 999, 1000)], "want": {_found("H1", 999, 1000)}},
	"twin, tested at 1.5 times": {"given": [_hose("H1", 1500, 1000)], "want": set()},
	"test pressure not stated": {"given": [{"id": "H1", "rated_kpa": 1000}], "want": set()},
	"rating unknown": {"given": [{"id": "H1", "test_pressure_kpa": 1}], "want": set()},
	"no hoses": {"given": [], "want": set()},
	"both of two": {
		"given": [_hose("H1", 400, 1000), _hose("H2", 500, 1600)],
		"want": {_found("H1", 400, 1000), _found("H2", 500, 1600)},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := proof_test_below_working_pressure.report with input as {"hoses": tc.given}
	got == tc.want
}
