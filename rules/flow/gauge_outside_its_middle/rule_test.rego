package rules.flow.gauge_outside_its_middle_test

import data.rules.flow.gauge_outside_its_middle

# Up to three quarters for steady pressure (EN 837-2, recalled); the middle half is the most accurate (ASME
# B40.100, recalled). 6 bar on a 0 to 25 bar scale is 24 %.
_gauge(more) := object.union({"id": "PI1"}, more)

_found := {
	"subject": "PI1",
	"part": "PI1",
	"side": "below",
	"have_permille": 240,
	"need_permille": 250,
}

_cases := {
	"6 bar on 25": {
		"given": [_gauge({"duty_share_permille": 240})],
		"want": {_found},
	},
	"one under the lower limit": {
		"given": [_gauge({"duty_share_permille": 249})],
		"want": {object.union(_found, {"have_permille": 249})},
	},
	"at the lower limit": {
		"given": [_gauge({"duty_share_permille": 250})],
		"want": set(),
	},
	"at the upper limit": {
		"given": [_gauge({"duty_share_permille": 750})],
		"want": set(),
	},
	"one past the upper limit": {
		"given": [_gauge({"duty_share_permille": 751})],
		"want": {object.union(_found, {"side": "above", "have_permille": 751, "need_permille": 750})},
	},
	"twin, 6 bar on 10": {
		"given": [_gauge({"duty_share_permille": 600})],
		"want": set(),
	},
	"unknown": {
		"given": [_gauge({"full_scale_kpa": 2500})],
		"want": set(),
	},
	"the second of two": {
		"given": [_gauge({"duty_share_permille": 600}), _gauge({"duty_share_permille": 240, "id": "PI2"})],
		"want": {object.union(_found, {"subject": "PI2", "part": "PI2"})},
	},
	"both of two": {
		"given": [_gauge({"duty_share_permille": 240}), _gauge({"duty_share_permille": 240, "id": "PI2"})],
		"want": {_found, object.union(_found, {"subject": "PI2", "part": "PI2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := gauge_outside_its_middle.report with input as {"gauges": tc.given}
	got == tc.want
}
