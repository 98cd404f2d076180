package rules.relief.lpg_window_above_hose_test

import data.rules.relief.lpg_window_above_hose

_relief(set_kpa, weakest_kpa) := {
	"id": "RV1",
	"on_lpg_liquid": true,
	"weakest": "H1 hose",
	"set_kpa": set_kpa,
	"weakest_kpa": weakest_kpa,
}

_found(set_kpa, weakest_kpa) := {
	"subject": "RV1",
	"part": "RV1",
	"weakest": "H1 hose",
	"have_kpa": weakest_kpa,
	"need_kpa": set_kpa,
}

_law := ["29 CFR 1910.110"]

_cases := {
	"below the rating": {"regimes": _law, "given": [_relief(2000, 2413)], "want": set()},
	"at the rating, rounded apart": {"regimes": _law, "given": [_relief(2414, 2413)], "want": set()},
	"one past it": {"regimes": _law, "given": [_relief(2415, 2413)], "want": {_found(2415, 2413)}},
	"in the window": {"regimes": _law, "given": [_relief(2896, 2413)], "want": {_found(2896, 2413)}},
	"set pressure unknown": {
		"regimes": _law,
		"given": [object.remove(_relief(0, 2413), ["set_kpa"])],
		"want": set(),
	},
	"rating unknown": {
		"regimes": _law,
		"given": [object.remove(_relief(2896, 0), ["weakest_kpa"])],
		"want": set(),
	},
	"the law does not apply": {"regimes": [], "given": [_relief(2896, 2413)], "want": set()},
	"no liquid LP-gas": {
		"regimes": _law,
		"given": [object.union(_relief(2896, 2413), {"on_lpg_liquid": false})],
		"want": set(),
	},
	"the second of two": {
		"regimes": _law,
		"given": [_relief(2000, 2413), object.union(_relief(2896, 2413), {"id": "RV2"})],
		"want": {object.union(_found(2896, 2413), {"subject": "RV2", "part": "RV2"})},
	},
	"twin, a hose rated for it": {"regimes": _law, "given": [_relief(2896, 3448)], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := lpg_window_above_hose.report with input as {"reliefs": tc.given, "line": {"regimes": tc.regimes}}
	got == tc.want
}
