package rules.material.lpg_aluminium_tube_above_law_test

import data.rules.material.lpg_aluminium_tube_above_law

# 29 CFR 1910.110(b)(8)(ii), CFR 2015 annual edition (published): at most 20 psig = 137.9 kPa.
_it(more) := object.union({"id": "T1 body", "part": "T1", "what": "body"}, more)

_found(more) := object.union({"subject": "T1 body", "part": "T1", "demand_kpa": 139, "most_kpa": 138}, more)

_law := {"regimes": ["29 CFR 1910.110"]}

_cases := {
	"one above": {
		"line": _law,
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": {_found({})},
	},
	"at the limit": {
		"line": _law,
		"given": [_it({"demand_kpa": 138})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": set(),
	},
	"below": {
		"line": _law,
		"given": [_it({"demand_kpa": 50})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": set(),
	},
	"pressure unknown": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": set(),
	},
	"cast aluminium": {
		"line": _law,
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A03560"}]}},
		"want": {_found({})},
	},
	"limited": {
		"line": _law,
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"limited": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": {_found({})},
	},
	"nothing known of it": {
		"line": _law,
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"unlisted": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": {_found({})},
	},
	"steel": {
		"line": _law,
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "CS"}]}},
		"want": set(),
	},
	"another part of aluminium": {
		"line": _law,
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "V9", "material": "A96061"}]}},
		"want": set(),
	},
	"a valve": {
		"line": _law,
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T1", "kind": "valve"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": set(),
	},
	"another pipe": {
		"line": _law,
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T9", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": set(),
	},
	"an end": {
		"line": _law,
		"given": [_it({"demand_kpa": 139, "what": "end"})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({"demand_kpa": 139})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": set(),
	},
	"two, one over": {
		"line": _law,
		"given": [_it({"demand_kpa": 100}), _it({"id": "T1 again", "demand_kpa": 200})],
		"more": {"parts": [{"id": "T1", "kind": "pipe"}], "pairs": {"suitable": [{"id": "x", "part": "T1", "material": "A96061"}]}},
		"want": {_found({"subject": "T1 again", "demand_kpa": 200})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := lpg_aluminium_tube_above_law.report with input as object.union(tc.more, {"line": tc.line, "capacities": tc.given})
	got == tc.want
}
