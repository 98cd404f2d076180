package rules.expansion.vessel_liquid_full_when_hot_test

import data.rules.expansion.vessel_liquid_full_when_hot

# Acetone shut in at 15 °C in a vessel 95 % full fills it at 51.3 °C = 32445 centikelvin (computed); 49 CFR
# 173.301(a)(8), CFR 2015 annual edition (published), wants no cylinder liquid full when hot.
_vessel(more) := object.union(
	{
		"id": "tanker",
		"is_source": true,
		"is_target": false,
		"closed": true,
		"padded": false,
		"holds_flammable": false,
		"holds_chlorine": false,
		"holds_liquid": true,
		"has_relief": false,
		"quantity_stated": false,
	},
	more,
)

_found := {"subject": "tanker", "part": "tanker", "have_ck": 32445, "need_ck": 33815}

_cases := {
	"acetone, 95 % full, at 65 °C": {
		"given": [_vessel({"liquid_full_ck": 32445, "hottest_ck": 33815})],
		"want": {_found},
	},
	"full at the hottest": {
		"given": [_vessel({"liquid_full_ck": 32445, "hottest_ck": 32445})],
		"want": {object.union(_found, {"need_ck": 32445})},
	},
	"full one hundredth later": {
		"given": [_vessel({"liquid_full_ck": 32446, "hottest_ck": 32445})],
		"want": set(),
	},
	"one past": {
		"given": [_vessel({"liquid_full_ck": 32445, "hottest_ck": 32446})],
		"want": {object.union(_found, {"need_ck": 32446})},
	},
	"twin, 90 % full": {
		"given": [_vessel({"liquid_full_ck": 35795, "hottest_ck": 33815})],
		"want": set(),
	},
	"fill unknown": {
		"given": [_vessel({"hottest_ck": 33815})],
		"want": set(),
	},
	"hottest unknown": {
		"given": [_vessel({"liquid_full_ck": 32445})],
		"want": set(),
	},
	"open to the air": {
		"given": [_vessel({"liquid_full_ck": 32445, "hottest_ck": 33815, "closed": false})],
		"want": set(),
	},
	"gas": {
		"given": [_vessel({"liquid_full_ck": 32445, "hottest_ck": 33815, "holds_liquid": false})],
		"want": set(),
	},
	"destination, which another rule judges": {
		"given": [_vessel({"liquid_full_ck": 32445, "hottest_ck": 33815, "is_source": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_vessel({"liquid_full_ck": 35795, "hottest_ck": 33815}),
			_vessel({"liquid_full_ck": 32445, "hottest_ck": 33815, "id": "drum"}),
		],
		"want": {object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"both of two": {
		"given": [
			_vessel({"liquid_full_ck": 32445, "hottest_ck": 33815}),
			_vessel({"liquid_full_ck": 32445, "hottest_ck": 33815, "id": "drum"}),
		],
		"want": {_found, object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := vessel_liquid_full_when_hot.report with input as {"vessels": tc.given}
	got == tc.want
}
