package rules.pressure.ammonia_container_below_law_test

import data.rules.pressure.ammonia_container_below_law

# 29 CFR 1910.111(c)(1), CFR 2015 annual edition (published): at least 250 psig = 1723.7 kPa.
_it(more) := object.union({"id": "V1", "holds_liquid": true, "kind": "tank"}, more)

_found(more) := object.union({"subject": "V1", "vessel": "V1", "have_kpa": 1722, "need_kpa": 1723}, more)

_law := {"regimes": ["29 CFR 1910.111"]}

_cases := {
	"one below": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"rated_kpa": 1723})],
		"want": set(),
	},
	"above": {
		"line": _law,
		"given": [_it({"rated_kpa": 1724})],
		"want": set(),
	},
	"unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"a pressure vessel": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722, "kind": "pressure-vessel"})],
		"want": {_found({})},
	},
	"a road tank": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722, "kind": "tanker"})],
		"want": {_found({})},
	},
	"a process vessel": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722, "kind": "process-vessel"})],
		"want": set(),
	},
	"no liquid": {
		"line": _law,
		"given": [_it({"rated_kpa": 1722, "holds_liquid": false})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"rated_kpa": 1722})],
		"want": set(),
	},
	"two, one short": {
		"line": _law,
		"given": [_it({"rated_kpa": 1723}), _it({"id": "V2", "rated_kpa": 1000})],
		"want": {_found({"subject": "V2", "vessel": "V2", "have_kpa": 1000})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_container_below_law.report with input as {"line": tc.line, "vessels": tc.given}
	got == tc.want
}
