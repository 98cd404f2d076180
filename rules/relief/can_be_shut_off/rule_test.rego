package rules.relief.can_be_shut_off_test

import data.rules.relief.can_be_shut_off

# 29 CFR 1910.111(b)(9)(v) and 1910.110(b)(10)(viii), CFR 2015 annual edition (published).
_relief(more) := object.union(
	{
		"id": "PSV1",
		"run": "liquid",
		"on_vessel": false,
		"weakest": "H1",
		"weakest_is_hose": true,
		"on_lpg_liquid": false,
		"isolatable_stated": true,
		"zone_a_cylinder": false,
	},
	more,
)

_found := {"subject": "PSV1", "part": "PSV1"}

_cases := {
	"faulty": {
		"given": [_relief({"isolatable": true})],
		"want": {_found},
	},
	"twin, nothing can cut it off": {
		"given": [_relief({"isolatable": false})],
		"want": set(),
	},
	"unknown": {
		"given": [_relief({})],
		"want": set(),
	},
	"not stated, which another rule says": {
		"given": [_relief({"isolatable_stated": false})],
		"want": set(),
	},
	"stated for another": {
		"given": [_relief({"isolatable": true, "isolatable_stated": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_relief({"isolatable": false}), _relief({"isolatable": true, "id": "PSV2"})],
		"want": {object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"both of two": {
		"given": [_relief({"isolatable": true}), _relief({"isolatable": true, "id": "PSV2"})],
		"want": {_found, object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := can_be_shut_off.report with input as {"reliefs": tc.given}
	got == tc.want
}
