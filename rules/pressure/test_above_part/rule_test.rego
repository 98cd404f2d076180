package rules.pressure.test_above_part_test

import data.rules.pressure.test_above_part

# Half as much again with a liquid, a third with a gas: ASME B31.3 345.4.2 and 345.5.4 (recalled); hoses in use with water,
# 1.5 times: RMA IP-2 chapter 9 (published). What has no reserve counts as rated (practice).
_it(edits) := object.union(
	{"id": "V1 body", "part": "V1", "what": "body", "run": "liquid", "gas": false, "rated_kpa": 1000, "test_ratio_permille": 1500},
	edits,
)

_found(edits) := object.union(
	{"subject": "V1 body", "part": "V1", "what": "body", "run": "liquid", "case": "pressure-test", "medium": "liquid", "rated_kpa": 1000, "have_ratio_permille": 1500, "need_ratio_permille": 1501},
	edits,
)

_cases := {
	"liquid below": {
		"given": [_it({"test_ratio_permille": 1499})],
		"want": set(),
	},
	"liquid at": {
		"given": [_it({})],
		"want": set(),
	},
	"liquid one past": {
		"given": [_it({"test_ratio_permille": 1501})],
		"want": {_found({})},
	},
	"end at": {
		"given": [_it({"what": "end"})],
		"want": set(),
	},
	"end one past": {
		"given": [_it({"what": "end", "test_ratio_permille": 1501})],
		"want": {_found({"what": "end"})},
	},
	"hose at": {
		"given": [_it({"what": "hose"})],
		"want": set(),
	},
	"hose one past": {
		"given": [_it({"what": "hose", "test_ratio_permille": 1501})],
		"want": {_found({"what": "hose"})},
	},
	"hose of a weak class at": {
		"given": [_it({"what": "hose", "proof_ratio_permille": 1250, "test_ratio_permille": 1250})],
		"want": set(),
	},
	"hose of a weak class past": {
		"given": [_it({"what": "hose", "proof_ratio_permille": 1250, "test_ratio_permille": 1251})],
		"want": {_found({"what": "hose", "have_ratio_permille": 1250, "need_ratio_permille": 1251})},
	},
	"hose of a strong class past": {
		"given": [_it({"what": "hose", "proof_ratio_permille": 2000, "test_ratio_permille": 1501})],
		"want": {_found({"what": "hose"})},
	},
	"gauge with liquid at": {
		"given": [_it({"what": "gauge", "gas": false, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"gauge with liquid past": {
		"given": [_it({"what": "gauge", "gas": false, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "gauge",
			"medium": "liquid",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"gauge with gas at": {
		"given": [_it({"what": "gauge", "gas": true, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"gauge with gas past": {
		"given": [_it({"what": "gauge", "gas": true, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "gauge",
			"medium": "gas",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"regulator with liquid at": {
		"given": [_it({"what": "regulator", "gas": false, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"regulator with liquid past": {
		"given": [_it({"what": "regulator", "gas": false, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "regulator",
			"medium": "liquid",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"regulator with gas at": {
		"given": [_it({"what": "regulator", "gas": true, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"regulator with gas past": {
		"given": [_it({"what": "regulator", "gas": true, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "regulator",
			"medium": "gas",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"pump with liquid at": {
		"given": [_it({"what": "pump", "gas": false, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"pump with liquid past": {
		"given": [_it({"what": "pump", "gas": false, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "pump",
			"medium": "liquid",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"pump with gas at": {
		"given": [_it({"what": "pump", "gas": true, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"pump with gas past": {
		"given": [_it({"what": "pump", "gas": true, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "pump",
			"medium": "gas",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"vessel with liquid at": {
		"given": [_it({"what": "vessel", "gas": false, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"vessel with liquid past": {
		"given": [_it({"what": "vessel", "gas": false, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "vessel",
			"medium": "liquid",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"vessel with gas at": {
		"given": [_it({"what": "vessel", "gas": true, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"vessel with gas past": {
		"given": [_it({"what": "vessel", "gas": true, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "vessel",
			"medium": "gas",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"seal with liquid at": {
		"given": [_it({"what": "seal", "gas": false, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"seal with liquid past": {
		"given": [_it({"what": "seal", "gas": false, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "seal",
			"medium": "liquid",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"seal with gas at": {
		"given": [_it({"what": "seal", "gas": true, "test_ratio_permille": 1000})],
		"want": set(),
	},
	"seal with gas past": {
		"given": [_it({"what": "seal", "gas": true, "test_ratio_permille": 1001})],
		"want": {_found({
			"what": "seal",
			"medium": "gas",
			"have_ratio_permille": 1000,
			"need_ratio_permille": 1001,
		})},
	},
	"gas at the end of a hose at": {
		"given": [_it({"what": "end", "gas": true, "test_ratio_permille": 1330})],
		"want": set(),
	},
	"gas below": {
		"given": [_it({"gas": true, "test_ratio_permille": 1329})],
		"want": set(),
	},
	"gas at": {
		"given": [_it({"gas": true, "test_ratio_permille": 1330})],
		"want": set(),
	},
	"gas one past": {
		"given": [_it({"gas": true, "test_ratio_permille": 1331})],
		"want": {_found({"medium": "gas", "have_ratio_permille": 1330, "need_ratio_permille": 1331})},
	},
	"gas in an end one past": {
		"given": [_it({"gas": true, "what": "end", "test_ratio_permille": 1331})],
		"want": {_found({"what": "end", "medium": "gas", "have_ratio_permille": 1330, "need_ratio_permille": 1331})},
	},
	"gas in a hose at": {
		"given": [_it({"gas": true, "what": "hose", "test_ratio_permille": 1000})],
		"want": set(),
	},
	"gas in a hose past": {
		"given": [_it({"gas": true, "what": "hose", "test_ratio_permille": 1001})],
		"want": {_found({"what": "hose", "medium": "gas", "have_ratio_permille": 1000, "need_ratio_permille": 1001})},
	},
	"gas in a hose with a proof figure": {
		"given": [_it({"gas": true, "what": "hose", "proof_ratio_permille": 1500, "test_ratio_permille": 1001})],
		"want": {_found({"what": "hose", "medium": "gas", "have_ratio_permille": 1000, "need_ratio_permille": 1001})},
	},
	"a relief device is judged elsewhere": {
		"given": [_it({"what": "relief", "test_ratio_permille": 9999})],
		"want": set(),
	},
	"rating unknown": {
		"given": [object.remove(_it({"test_ratio_permille": 9999}), ["rated_kpa"])],
		"want": set(),
	},
	"test unknown": {
		"given": [object.remove(_it({}), ["test_ratio_permille"])],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({}), _it({"id": "V2 body", "part": "V2", "test_ratio_permille": 1501})],
		"want": {_found({"subject": "V2 body", "part": "V2"})},
	},
	"twin, a stronger part": {
		"given": [_it({"rated_kpa": 1001, "test_ratio_permille": 1499})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := test_above_part.report with input as {"test_items": tc.given}
	got == tc.want
}
