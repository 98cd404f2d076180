package rules.pressure.rating_below_demand_test

import data.rules.pressure.rating_below_demand

# A cam and lever coupling of DN 100 holds 10 bar whatever its alloy (EN 14420-7 scope, published); a class 150 flange
# of S31600 holds 17.3 bar at 75 °C (between the rows of ASME B16.5 table 2-2.2, restated).
_holds(id, rated, demand) := {
	"id": id, "part": "H1", "what": "end", "case": "pump-shut-in",
	"rated_kpa": rated, "demand_kpa": demand, "accumulates": false,
}

_found(id, have, need) := {
	"subject": id, "part": "H1", "what": "end", "case": "pump-shut-in",
	"have_kpa": have, "need_kpa": need,
}

_cases := {
	"spare rating": {"given": [_holds("C1", 1600, 1000)], "want": set()},
	"exactly equal": {"given": [_holds("C1", 1000, 1000)], "want": set()},
	"one short": {"given": [_holds("C1", 999, 1000)], "want": {_found("C1", 999, 1000)}},
	"twin, the next rating up": {"given": [_holds("C1", 1600, 1600)], "want": set()},
	"rating unknown": {"given": [object.remove(_holds("C1", 0, 1000), ["rated_kpa"])], "want": set()},
	"demand unknown": {"given": [object.remove(_holds("C1", 999, 0), ["demand_kpa"])], "want": set()},
	"a vessel that may accumulate is another rule's": {
		"given": [object.union(_holds("C1", 999, 1000), {"accumulates": true})],
		"want": set(),
	},
	"nothing holds pressure": {"given": [], "want": set()},
	"two of three short": {
		"given": [_holds("C1", 1000, 1200), _holds("C2", 1730, 1200), _holds("C3", 0, 1200)],
		"want": {_found("C1", 1000, 1200), _found("C3", 0, 1200)},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := rating_below_demand.report with input as {"capacities": tc.given}
	got == tc.want
}
