package rules.pressure.vessel_accumulates_beyond_code_test

import data.rules.pressure.vessel_accumulates_beyond_code

_vessel(rated, demand) := {
	"id": "V1", "part": "V1", "what": "vessel", "case": "regulator-failed-open",
	"rated_kpa": rated, "demand_kpa": demand, "accumulates": true,
}

_found(have, need) := {
	"subject": "V1", "part": "V1", "case": "regulator-failed-open",
	"have_kpa": have, "need_kpa": need,
}

_cases := {
	"below the rating": {"given": [_vessel(1000, 900)], "want": set()},
	"a tenth above, as granted": {"given": [_vessel(1000, 1100)], "want": set()},
	"one past the grant": {"given": [_vessel(1000, 1101)], "want": {_found(1000, 1101)}},
	"rating unknown": {"given": [object.remove(_vessel(0, 1101), ["rated_kpa"])], "want": set()},
	"demand unknown": {"given": [object.remove(_vessel(1000, 0), ["demand_kpa"])], "want": set()},
	"no vessel, no grant": {
		"given": [object.union(_vessel(1000, 1101), {"accumulates": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_vessel(2000, 1101), object.union(_vessel(1000, 1200), {"id": "V2", "part": "V2"})],
		"want": {object.union(_found(1000, 1200), {"subject": "V2", "part": "V2"})},
	},
	"twin, a larger device": {"given": [_vessel(1000, 1050)], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := vessel_accumulates_beyond_code.report with input as {"capacities": tc.given}
	got == tc.want
}
