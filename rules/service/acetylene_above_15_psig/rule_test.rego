package rules.service.acetylene_above_15_psig_test

import data.rules.service.acetylene_above_15_psig

# 29 CFR 1910.253(a)(2), CFR 2015 annual edition (published): 15 psig = 103.4 kPa, 104 when rounded
# up.
_fluid(more) := object.union(
	{"id": "F1", "name": "acetylene", "fluid": "acetylene"},
	more,
)

_found := {"subject": "F1", "name": "acetylene", "have_kpa": 105, "need_kpa": 104}

_cases := {
	"one past": {
		"given": [_fluid({"duty_kpa": 105})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_fluid({"duty_kpa": 104})],
		"want": set(),
	},
	"below": {
		"given": [_fluid({"duty_kpa": 103})],
		"want": set(),
	},
	"unknown": {
		"given": [_fluid({})],
		"want": set(),
	},
	"another gas": {
		"given": [_fluid({"duty_kpa": 105, "fluid": "propane"})],
		"want": set(),
	},
	"the second of two": {
		"given": [_fluid({"duty_kpa": 104}), _fluid({"duty_kpa": 105, "id": "F2"})],
		"want": {object.union(_found, {"subject": "F2"})},
	},
	"both of two": {
		"given": [_fluid({"duty_kpa": 105}), _fluid({"duty_kpa": 105, "id": "F2"})],
		"want": {_found, object.union(_found, {"subject": "F2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := acetylene_above_15_psig.report with input as {"fluids": tc.given}
	got == tc.want
}
