package rules.record.discharge_limit_not_stated_test

import data.rules.record.discharge_limit_not_stated

# 49 CFR 178.703 (recalled): the mark is wanted when relevant.
_it(more) := object.union({"id": "V1", "padded": true, "kind": "ibc"}, more)

_found(more) := object.union({"subject": "V1", "vessel": "V1"}, more)

_law := {"regimes": []}

_cases := {
	"not stated": {
		"line": _law,
		"given": [_it({})],
		"want": {_found({})},
	},
	"a tote": {
		"line": _law,
		"given": [_it({"kind": "tote"})],
		"want": {_found({})},
	},
	"stated": {
		"line": _law,
		"given": [_it({"discharge_limit_kpa": 100})],
		"want": set(),
	},
	"stated as nothing": {
		"line": _law,
		"given": [_it({"discharge_limit_kpa": 0})],
		"want": set(),
	},
	"no pad": {
		"line": _law,
		"given": [_it({"padded": false})],
		"want": set(),
	},
	"a drum": {
		"line": _law,
		"given": [_it({"kind": "drum"})],
		"want": set(),
	},
	"two, one stated": {
		"line": _law,
		"given": [_it({"discharge_limit_kpa": 100}), _it({"id": "V2"})],
		"want": {_found({"subject": "V2", "vessel": "V2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := discharge_limit_not_stated.report with input as {"line": tc.line, "vessels": tc.given}
	got == tc.want
}
