package rules.expansion.lpg_relief_outside_window_test

import data.rules.expansion.lpg_relief_outside_window

# 29 CFR 1910.110(b)(10)(xii), CFR 2015 annual edition (published): not over 500 psig = 3447.4 kPa; joined to
# DOT containers not under 400 psig = 2757.9 kPa.
_relief(more) := object.union({"id": "PSV1", "on_lpg_liquid": true}, more)

_found := {
	"subject": "PSV1",
	"part": "PSV1",
	"bound": "no more than",
	"have_kpa": 3449,
	"need_kpa": 3448,
}

_law := ["29 CFR 1910.110"]

_cases := {
	"one past the upper bound": {
		"vessels": [],
		"law": _law,
		"given": [_relief({"set_kpa": 3449})],
		"want": {_found},
	},
	"twin, at the upper bound, 500 psig": {
		"vessels": [],
		"law": _law,
		"given": [_relief({"set_kpa": 3448})],
		"want": set(),
	},
	"below the upper bound": {
		"vessels": [],
		"law": _law,
		"given": [_relief({"set_kpa": 3447})],
		"want": set(),
	},
	"low, container not a cylinder": {
		"vessels": [{"kind": "tank", "holds_flammable": true, "holds_liquid": true}],
		"law": _law,
		"given": [_relief({"set_kpa": 2757})],
		"want": set(),
	},
	"low, container unknown": {
		"vessels": [{"holds_flammable": true, "holds_liquid": true}],
		"law": _law,
		"given": [_relief({"set_kpa": 2757})],
		"want": set(),
	},
	"one under the lower bound at a cylinder": {
		"vessels": [{"kind": "tank", "holds_flammable": true, "holds_liquid": true}, {"kind": "cylinder", "holds_flammable": true, "holds_liquid": true}],
		"law": _law,
		"given": [_relief({"set_kpa": 2757})],
		"want": {object.union(_found, {"bound": "no less than", "have_kpa": 2757, "need_kpa": 2758})},
	},
	"at the lower bound, 400 psig, at a cylinder": {
		"vessels": [{"kind": "cylinder", "holds_flammable": true, "holds_liquid": true}],
		"law": _law,
		"given": [_relief({"set_kpa": 2758})],
		"want": set(),
	},
	"low beside a cylinder of nitrogen": {
		"vessels": [{"kind": "cylinder", "holds_flammable": false, "holds_liquid": false}],
		"law": _law,
		"given": [_relief({"set_kpa": 2757})],
		"want": set(),
	},
	"low beside a cylinder of inert liquid": {
		"vessels": [{"kind": "cylinder", "holds_flammable": false, "holds_liquid": true}],
		"law": _law,
		"given": [_relief({"set_kpa": 2757})],
		"want": set(),
	},
	"low beside a cylinder of flammable gas": {
		"vessels": [{"kind": "cylinder", "holds_flammable": true, "holds_liquid": false}],
		"law": _law,
		"given": [_relief({"set_kpa": 2757})],
		"want": set(),
	},
	"set pressure unknown": {
		"vessels": [{"kind": "cylinder", "holds_flammable": true, "holds_liquid": true}],
		"law": _law,
		"given": [_relief({})],
		"want": set(),
	},
	"not on LP-gas": {
		"vessels": [],
		"law": _law,
		"given": [_relief({"set_kpa": 3449, "on_lpg_liquid": false})],
		"want": set(),
	},
	"another regime": {
		"vessels": [],
		"law": ["ADR"],
		"given": [_relief({"set_kpa": 3449})],
		"want": set(),
	},
	"no regime": {
		"vessels": [],
		"law": [],
		"given": [_relief({"set_kpa": 3449})],
		"want": set(),
	},
	"the second of two": {
		"vessels": [],
		"law": _law,
		"given": [_relief({"set_kpa": 3448}), _relief({"set_kpa": 3449, "id": "PSV2"})],
		"want": {object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"both of two": {
		"vessels": [],
		"law": _law,
		"given": [_relief({"set_kpa": 3449}), _relief({"set_kpa": 3449, "id": "PSV2"})],
		"want": {_found, object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"nothing to judge": {
		"vessels": [],
		"law": _law,
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := lpg_relief_outside_window.report with input as {"line": {"regimes": tc.law}, "reliefs": tc.given, "vessels": tc.vessels}
	got == tc.want
}
