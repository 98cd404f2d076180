package rules.identity.labels_too_alike_test

import data.rules.identity.labels_too_alike

# Common practice, no source: ethanol and methanol stand a letter apart.
_it(more) := object.union({"id": "a and b", "a": "T1/fill", "b": "T2/fill", "label_a": "ethanol", "label_b": "methanol", "likeness": "one-character", "keyed": false, "coupling": "same"}, more)

_found(more) := object.union({"subject": "a and b", "a": "T1/fill", "b": "T2/fill", "label_a": "ethanol", "label_b": "methanol", "likeness": "they differ in one character only"}, more)

_cases := {
	"one character": {
		"given": [_it({})],
		"want": {_found({})},
	},
	"coupling not known": {
		"given": [_it({"coupling": "same"})],
		"want": {_found({})},
	},
	"same": {
		"given": [_it({"likeness": "same"})],
		"want": {_found({"likeness": "the two are the same"})},
	},
	"look-alike-character": {
		"given": [_it({"likeness": "look-alike-character"})],
		"want": {_found({"likeness": "they differ in characters that look alike"})},
	},
	"transposed": {
		"given": [_it({"likeness": "transposed"})],
		"want": {_found({"likeness": "two characters have changed places"})},
	},
	"last-digit": {
		"given": [_it({"likeness": "last-digit"})],
		"want": {_found({"likeness": "they differ in the last digit only"})},
	},
	"twin, another coupling": {
		"given": [_it({"coupling": "different"})],
		"want": set(),
	},
	"keyed": {
		"given": [_it({"keyed": true})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"keyed": true}), _it({"id": "c and d"})],
		"want": {_found({"subject": "c and d"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := labels_too_alike.report with input as {"labels": tc.given}
	got == tc.want
}
