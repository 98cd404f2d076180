package rules.identity.other_fluid_takes_same_coupling_test

import data.rules.identity.other_fluid_takes_same_coupling

# Practice, no source; the way to the wrong point is that of the case study of January 2018 (published).
_it(more) := object.union({"id": "P2", "vessel": "T2", "target": false, "keyed": false}, more)

_found(more) := object.union({"subject": "P2", "point": "P2", "vessel": "T2"}, more)

_law := {"regimes": []}

_cases := {
	"same coupling": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": false, "coupling": "same"})],
		"want": {_found({})},
	},
	"another coupling": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": false, "coupling": "different"})],
		"want": set(),
	},
	"the same fluid": {
		"line": _law,
		"given": [_it({"same_fluid": true, "hazardous": false, "coupling": "same"})],
		"want": set(),
	},
	"dangerous is judged elsewhere": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": true, "coupling": "same"})],
		"want": set(),
	},
	"danger unknown": {
		"line": _law,
		"given": [_it({"same_fluid": false, "coupling": "same"})],
		"want": set(),
	},
	"coupling unknown": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": false})],
		"want": set(),
	},
	"keyed": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": false, "coupling": "same", "keyed": true})],
		"want": set(),
	},
	"padlocked": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": false, "coupling": "same", "padlocked": true})],
		"want": set(),
	},
	"padlock off": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": false, "coupling": "same", "padlocked": false})],
		"want": {_found({})},
	},
	"the point meant": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": false, "coupling": "same", "target": true})],
		"want": set(),
	},
	"two points": {
		"line": _law,
		"given": [_it({"same_fluid": false, "hazardous": false, "coupling": "same"}), _it({"same_fluid": false, "hazardous": false, "coupling": "same", "id": "P3", "vessel": "T3"})],
		"want": {_found({}), _found({"subject": "P3", "point": "P3", "vessel": "T3"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := other_fluid_takes_same_coupling.report with input as {"line": tc.line, "points": tc.given}
	got == tc.want
}
