package rules.connection.hose_tail_differs_test

import data.rules.connection.hose_tail_differs

# Sizes of ISO 1307 (restated); practice, no source.
_it(more) := object.union({"id": "H1", "clamp_stated": false}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "have_um": 46999, "need_um": 50000}, more)

_cases := {
	"past six per cent": {
		"given": [_it({"tail_um": 46999, "hose_um": 50000})],
		"want": {_found({})},
	},
	"at six per cent": {
		"given": [_it({"tail_um": 47000, "hose_um": 50000})],
		"want": set(),
	},
	"past, the other way": {
		"given": [_it({"tail_um": 50000, "hose_um": 46999})],
		"want": {_found({"have_um": 50000, "need_um": 46999})},
	},
	"at, the other way": {
		"given": [_it({"tail_um": 50000, "hose_um": 47000})],
		"want": set(),
	},
	"twin, the same": {
		"given": [_it({"tail_um": 50000, "hose_um": 50000})],
		"want": set(),
	},
	"tail unknown": {
		"given": [_it({"hose_um": 51000})],
		"want": set(),
	},
	"hose unknown": {
		"given": [_it({"tail_um": 51000})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"tail_um": 51000, "hose_um": 51000}), _it({"id": "H2", "tail_um": 46999, "hose_um": 50000})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hose_tail_differs.report with input as {"tails": tc.given}
	got == tc.want
}
