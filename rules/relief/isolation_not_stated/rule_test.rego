package rules.relief.isolation_not_stated_test

import data.rules.relief.isolation_not_stated

# 29 CFR 1910.111(b)(9)(v), CFR 2015 annual edition (published). The sheet of a vessel has no place for it.
_relief(more) := object.union(
	{
		"id": "PSV1",
		"run": "liquid",
		"on_vessel": false,
		"weakest": "H1",
		"weakest_is_hose": true,
		"on_lpg_liquid": false,
		"isolatable_stated": false,
		"zone_a_cylinder": false,
	},
	more,
)

_found := {"subject": "PSV1", "part": "PSV1"}

_cases := {
	"not stated": {
		"given": [_relief({})],
		"want": {_found},
	},
	"twin, stated as no": {
		"given": [_relief({"isolatable_stated": true, "isolatable": false})],
		"want": set(),
	},
	"stated as yes, which another rule judges": {
		"given": [_relief({"isolatable_stated": true, "isolatable": true})],
		"want": set(),
	},
	"device of a vessel": {
		"given": [_relief({"on_vessel": true})],
		"want": set(),
	},
	"the second of two": {
		"given": [_relief({"isolatable_stated": true}), _relief({"id": "PSV2"})],
		"want": {object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"both of two": {
		"given": [_relief({}), _relief({"id": "PSV2"})],
		"want": {_found, object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := isolation_not_stated.report with input as {"reliefs": tc.given}
	got == tc.want
}
