package rules.connection.look_alike_joins_test

import data.rules.connection.look_alike_joins

# NPS 4 class 150 takes all eight bolts of a DN 100 PN 40 flange: bolt circles 190.5 and 190 mm
# (drilling of ASME B16.5 and EN 1092-1, restated; comparison computed).
_joint(more) := object.union(
	{"id": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "different gasket faces", "open_point": false},
	more,
)

_found := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet", "why": "different gasket faces"}

_cases := {
	"class flange on PN flange": {"given": [_joint({"mate": "stop"})], "want": {_found}},
	"twin, both ends to one standard": {"given": [_joint({"mate": "fits"})], "want": set()},
	"pair that does not join at all is another rule": {"given": [_joint({"mate": "no-fit"})], "want": set()},
	"pair nobody knows": {"given": [_joint({})], "want": set()},
	"open hatch, not a joint": {"given": [_joint({"mate": "stop", "open_point": true})], "want": set()},
	"two joints": {
		"given": [_joint({"mate": "stop"}), _joint({"mate": "stop", "id": "J2"})],
		"want": {_found, object.union(_found, {"subject": "J2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := look_alike_joins.report with input as {"joints": tc.given}
	got == tc.want
}
