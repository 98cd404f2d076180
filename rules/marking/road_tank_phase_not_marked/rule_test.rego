package rules.marking.road_tank_phase_not_marked_test

import data.rules.marking.road_tank_phase_not_marked

# 49 CFR 178.337-9(c), CFR 2015 annual edition (published).
_it(more) := object.union({"id": "truck", "may_be_road_tank": true}, more)

_found(more) := object.union({"subject": "truck", "vessel": "truck"}, more)

_cases := {
	"not marked": {
		"line": {"regimes": ["49 CFR 178.337-9"]},
		"given": [_it({"phase_marked": false})],
		"want": {_found({})},
	},
	"twin, marked": {
		"line": {"regimes": ["49 CFR 178.337-9"]},
		"given": [_it({"phase_marked": true})],
		"want": set(),
	},
	"unknown": {
		"line": {"regimes": ["49 CFR 178.337-9"]},
		"given": [_it({})],
		"want": set(),
	},
	"no road tank": {
		"line": {"regimes": ["49 CFR 178.337-9"]},
		"given": [_it({"phase_marked": false, "may_be_road_tank": false})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": []},
		"given": [_it({"phase_marked": false})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["49 CFR 178.337-9"]},
		"given": [_it({"phase_marked": true}), _it({"id": "truck 2", "phase_marked": false})],
		"want": {_found({"subject": "truck 2", "vessel": "truck 2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["49 CFR 178.337-9"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := road_tank_phase_not_marked.report with input as {"line": tc.line, "vessels": tc.given}
	got == tc.want
}
