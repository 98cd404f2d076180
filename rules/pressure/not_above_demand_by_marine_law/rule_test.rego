package rules.pressure.not_above_demand_by_marine_law_test

import data.rules.pressure.not_above_demand_by_marine_law

# 33 CFR 154.500(b), CFR 2015 annual edition (published): the working pressure is more than the sum.
_holds(id, rated, demand) := {
	"id": id, "part": "H1", "case": "pump-shut-in", "is_hose": true,
	"rated_kpa": rated, "demand_kpa": demand,
}

_found(id, have, need) := {"subject": id, "part": "H1", "case": "pump-shut-in", "have_kpa": have, "need_kpa": need}

_law := ["33 CFR 154.500"]

_cases := {
	"above": {"given": {"regimes": _law, "capacities": [_holds("C1", 1001, 1000)]}, "want": set()},
	"equal": {
		"given": {"regimes": _law, "capacities": [_holds("C1", 1000, 1000)]},
		"want": {_found("C1", 1000, 1000)},
	},
	"below": {
		"given": {"regimes": _law, "capacities": [_holds("C1", 999, 1000)]},
		"want": {_found("C1", 999, 1000)},
	},
	"rating unknown": {
		"given": {
			"regimes": _law,
			"capacities": [object.remove(_holds("C1", 0, 1000), ["rated_kpa"])],
		},
		"want": set(),
	},
	"demand unknown": {
		"given": {
			"regimes": _law,
			"capacities": [object.remove(_holds("C1", 9, 1000), ["demand_kpa"])],
		},
		"want": set(),
	},
	"not a hose": {
		"given": {
			"regimes": _law,
			"capacities": [object.union(_holds("C1", 1000, 1000), {"is_hose": false})],
		},
		"want": set(),
	},
	"another regime": {"given": {"regimes": ["ADR"], "capacities": [_holds("C1", 1000, 1000)]}, "want": set()},
	"two hoses, one short": {
		"given": {
			"regimes": _law,
			"capacities": [_holds("C1", 1600, 1000), _holds("C2", 1000, 1000)],
		},
		"want": {_found("C2", 1000, 1000)},
	},
	"twin, lower relief setting": {
		"given": {"regimes": _law, "capacities": [_holds("C1", 1000, 900)]},
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	given := {"line": {"regimes": tc.given.regimes}, "capacities": tc.given.capacities}
	got := not_above_demand_by_marine_law.report with input as given
	got == tc.want
}
