package rules.surge.closing_peak_above_rating_test

import data.rules.surge.closing_peak_above_rating

# Water at 3 m/s in DN 25 steel pipe, stopped at once, adds 42.5 bar (Joukowsky; the figure is computed); on 3
# bar that makes 4550 kPa.
_surge(more) := object.union({"id": "V3", "run": "liquid", "closing_stated": true, "weakest": "H1"}, more)

_found := {
	"subject": "V3",
	"part": "H1",
	"case": "surge",
	"device": "V3",
	"have_kpa": 1600,
	"need_kpa": 4550,
}

_cases := {
	"water stopped at once": {
		"given": [_surge({"peak_kpa": 4550, "weakest_kpa": 1600})],
		"want": {_found},
	},
	"one past the rating": {
		"given": [_surge({"peak_kpa": 1601, "weakest_kpa": 1600})],
		"want": {object.union(_found, {"need_kpa": 1601})},
	},
	"at the rating": {
		"given": [_surge({"peak_kpa": 1600, "weakest_kpa": 1600})],
		"want": set(),
	},
	"below the rating": {
		"given": [_surge({"peak_kpa": 1599, "weakest_kpa": 1600})],
		"want": set(),
	},
	"twin, closing in half a second: 1.2 bar on 3": {
		"given": [_surge({"peak_kpa": 420, "weakest_kpa": 1600})],
		"want": set(),
	},
	"closing time not stated": {
		"given": [_surge({"peak_kpa": 4550, "weakest_kpa": 1600, "closing_stated": false})],
		"want": {_found},
	},
	"peak unknown": {
		"given": [_surge({"weakest_kpa": 1600, "steady_kpa": 300})],
		"want": set(),
	},
	"rating unknown": {
		"given": [_surge({"peak_kpa": 4550})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_surge({"peak_kpa": 1600, "weakest_kpa": 1600}),
			_surge({"peak_kpa": 4550, "weakest_kpa": 1600, "id": "V4"}),
		],
		"want": {object.union(_found, {"subject": "V4", "device": "V4"})},
	},
	"both of two": {
		"given": [
			_surge({"peak_kpa": 4550, "weakest_kpa": 1600}),
			_surge({"peak_kpa": 4550, "weakest_kpa": 1600, "id": "V4"}),
		],
		"want": {_found, object.union(_found, {"subject": "V4", "device": "V4"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := closing_peak_above_rating.report with input as {"surges": tc.given}
	got == tc.want
}
