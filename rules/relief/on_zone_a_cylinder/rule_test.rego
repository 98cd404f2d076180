package rules.relief.on_zone_a_cylinder_test

import data.rules.relief.on_zone_a_cylinder

# 49 CFR 173.301(f)(6), CFR 2015 annual edition (published).
_relief(more) := object.union(
	{
		"id": "PSV1",
		"run": "liquid",
		"on_vessel": true,
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
		"given": [_relief({"zone_a_cylinder": true})],
		"want": {_found},
	},
	"twin, another zone or no cylinder": {
		"given": [_relief({"zone_a_cylinder": false})],
		"want": set(),
	},
	"nothing else known": {
		"given": [_relief({"zone_a_cylinder": true, "isolatable_stated": false})],
		"want": {_found},
	},
	"the second of two": {
		"given": [_relief({}), _relief({"zone_a_cylinder": true, "id": "PSV2"})],
		"want": {object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"both of two": {
		"given": [_relief({"zone_a_cylinder": true}), _relief({"zone_a_cylinder": true, "id": "PSV2"})],
		"want": {_found, object.union(_found, {"subject": "PSV2", "part": "PSV2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := on_zone_a_cylinder.report with input as {"reliefs": tc.given}
	got == tc.want
}
