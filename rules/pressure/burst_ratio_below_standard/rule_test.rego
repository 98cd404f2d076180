package rules.pressure.burst_ratio_below_standard_test

import data.rules.pressure.burst_ratio_below_standard

# Ratios of RMA IP-2, 2003, p. 50 (published): water to 150 psi 3, other liquids, gas and water above 4,
# liquids that boil when released 5, steam 10.
_hose(more) := object.union({"id": "H1", "medium": "liquid"}, more)

_found(medium, have, need) := {
	"subject": "H1", "part": "H1", "medium": medium,
	"have_ratio_permille": have, "need_ratio_permille": need,
}

_cases := {
	"liquid below": {"given": [_hose({"burst_ratio_permille": 3999})], "want": {_found("liquid", 3999, 4000)}},
	"liquid at": {"given": [_hose({"burst_ratio_permille": 4000})], "want": set()},
	"liquid above": {"given": [_hose({"burst_ratio_permille": 4001})], "want": set()},
	"gas below": {
		"given": [_hose({"medium": "gas", "burst_ratio_permille": 3999})],
		"want": {_found("gas", 3999, 4000)},
	},
	"gas at": {"given": [_hose({"medium": "gas", "burst_ratio_permille": 4000})], "want": set()},
	"liquefied gas below": {
		"given": [_hose({"medium": "liquefied-gas", "burst_ratio_permille": 4999})],
		"want": {_found("liquefied-gas", 4999, 5000)},
	},
	"liquefied gas at": {"given": [_hose({"medium": "liquefied-gas", "burst_ratio_permille": 5000})], "want": set()},
	"steam below": {
		"given": [_hose({"medium": "steam", "burst_ratio_permille": 9999})],
		"want": {_found("steam", 9999, 10000)},
	},
	"steam at": {"given": [_hose({"medium": "steam", "burst_ratio_permille": 10000})], "want": set()},
	"low water below": {
		"given": [_hose({"medium": "water", "rated_kpa": 1034, "burst_ratio_permille": 2999})],
		"want": {_found("water", 2999, 3000)},
	},
	"low water at": {
		"given": [_hose({"medium": "water", "rated_kpa": 1034, "burst_ratio_permille": 3000})],
		"want": set(),
	},
	"water one above the bound": {
		"given": [
			_hose({
				"medium": "water",
				"rated_kpa": 1035,
				"burst_ratio_permille": 3999,
			}),
		],
		"want": {_found("water", 3999, 4000)},
	},
	"water at the higher ratio": {
		"given": [
			_hose({
				"medium": "water",
				"rated_kpa": 1035,
				"burst_ratio_permille": 4000,
			}),
		],
		"want": set(),
	},
	"water of unknown rating": {
		"given": [_hose({"medium": "water", "burst_ratio_permille": 3500})],
		"want": {_found("water", 3500, 4000)},
	},
	"liquid is not water": {
		"given": [_hose({"rated_kpa": 600, "burst_ratio_permille": 3500})],
		"want": {_found("liquid", 3500, 4000)},
	},
	"own standard asks less": {
		"given": [_hose({"class_ratio_permille": 3000, "burst_ratio_permille": 3000})],
		"want": set(),
	},
	"own standard asks more": {
		"given": [_hose({"class_ratio_permille": 5000, "burst_ratio_permille": 4999})],
		"want": {_found("liquid", 4999, 5000)},
	},
	"own standard before water": {
		"given": [
			_hose({
				"medium": "water",
				"rated_kpa": 1000,
				"class_ratio_permille": 4000,
				"burst_ratio_permille": 3500,
			}),
		],
		"want": {_found("water", 3500, 4000)},
	},
	"ratio unknown": {"given": [_hose({})], "want": set()},
	"no hoses": {"given": [], "want": set()},
	"twin, liquefied gas hose of 350 and 1750 psi": {
		"given": [
			_hose({
				"medium": "liquefied-gas",
				"class_ratio_permille": 5000,
				"burst_ratio_permille": 5000,
			}),
		],
		"want": set(),
	},
	"second of two hoses": {
		"given": [
			_hose({"burst_ratio_permille": 4000}),
			_hose({"id": "H2", "burst_ratio_permille": 2500}),
		],
		"want": {object.union(_found("liquid", 2500, 4000), {"subject": "H2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := burst_ratio_below_standard.report with input as {"hoses": tc.given}
	got == tc.want
}
