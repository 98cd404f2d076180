package rules.pressure.ammonia_pump_below_law_test

import data.rules.pressure.ammonia_pump_below_law

# 29 CFR 1910.111(b)(12)(v)(a), CFR 2015 annual edition (published): at least 250 psig = 1723.7 kPa.
_it(more) := object.union({"id": "P1 body", "part": "P1", "what": "body"}, more)

_found(more) := object.union({"subject": "P1 body", "part": "P1", "have_kpa": 1722, "need_kpa": 1723}, more)

_law := {"regimes": ["29 CFR 1910.111"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722})],
		"more": {"parts": [{"id": "P1", "kind": "pump"}]},
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"rated_kpa": 1723})],
		"more": {"parts": [{"id": "P1", "kind": "pump"}]},
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"rated_kpa": 1724})],
		"more": {"parts": [{"id": "P1", "kind": "pump"}]},
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "P1", "kind": "pump"}]},
		"want": set(),
	},
	"a valve": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722})],
		"more": {"parts": [{"id": "P1", "kind": "valve"}]},
		"want": set(),
	},
	"the end of the pump": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722, "what": "end"})],
		"more": {"parts": [{"id": "P1", "kind": "pump"}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"rated_kpa": 1722})],
		"more": {"parts": [{"id": "P1", "kind": "pump"}]},
		"want": set(),
	},
	"the pump is another part": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722})],
		"more": {"parts": [{"id": "P2", "kind": "pump"}]},
		"want": set(),
	},
	"two pumps, one short": {
		"line": _law,
		"given": [_it({"rated_kpa": 1723}), _it({"id": "P2 body", "part": "P2", "rated_kpa": 900})],
		"more": {"parts": [{"id": "P1", "kind": "pump"}, {"id": "P2", "kind": "pump"}]},
		"want": {_found({"subject": "P2 body", "part": "P2", "have_kpa": 900})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_pump_below_law.report with input as object.union(tc.more, {"line": tc.line, "capacities": tc.given})
	got == tc.want
}
