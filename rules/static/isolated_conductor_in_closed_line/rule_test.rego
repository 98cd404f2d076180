package rules.static.isolated_conductor_in_closed_line_test

import data.rules.static.isolated_conductor_in_closed_line

# A part at an open point is the matter of another rule.
_part(more) := object.union(
	{"id": "P1", "kind": "valve", "carries_flammable": true, "at_open_point": false},
	more,
)

_found := {"subject": "P1", "part": "P1"}

_cases := {
	"faulty": {
		"given": [_part({"conductor": true, "bonded": false})],
		"want": {_found},
	},
	"twin, bonded": {
		"given": [_part({"conductor": true, "bonded": true})],
		"want": set(),
	},
	"bond unknown": {
		"given": [_part({"conductor": true})],
		"want": set(),
	},
	"material unknown": {
		"given": [_part({"bonded": false})],
		"want": set(),
	},
	"plastic part": {
		"given": [_part({"conductor": false, "bonded": false})],
		"want": set(),
	},
	"open point": {
		"given": [_part({"conductor": true, "bonded": false, "at_open_point": true})],
		"want": set(),
	},
	"nothing flammable": {
		"given": [_part({"conductor": true, "bonded": false, "carries_flammable": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_part({"conductor": true, "bonded": true}),
			_part({"conductor": true, "bonded": false, "id": "P2"}),
		],
		"want": {object.union(_found, {"subject": "P2", "part": "P2"})},
	},
	"both of two": {
		"given": [
			_part({"conductor": true, "bonded": false}),
			_part({"conductor": true, "bonded": false, "id": "P2"}),
		],
		"want": {_found, object.union(_found, {"subject": "P2", "part": "P2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := isolated_conductor_in_closed_line.report with input as {"parts": tc.given}
	got == tc.want
}
