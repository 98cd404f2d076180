package rules.connection.hose_end_only_banded_test

import data.rules.connection.hose_end_only_banded

# Common practice, no source: a worm-drive clamp on nitrogen at 6 bar is no hose end.
_hose(more) := object.union(
	{"id": "H1", "band_barred": true, "band_barred_by": "Nitrogen, a gas that can exceed 2 bar(g)"},
	more,
)

_found(retention) := {
	"subject": "H1", "part": "H1", "retention": retention,
	"carries": "Nitrogen, a gas that can exceed 2 bar(g)",
}

_cases := {
	"worm drive": {
		"given": [_hose({"end_retention": "worm-drive"})],
		"want": {_found("worm-drive")},
	},
	"band": {
		"given": [_hose({"end_retention": "band"})],
		"want": {_found("band")},
	},
	"nothing at all": {
		"given": [_hose({"end_retention": "none"})],
		"want": {_found("none")},
	},
	"twin, crimped": {
		"given": [_hose({"end_retention": "crimped"})],
		"want": set(),
	},
	"clamp shells over a collar": {
		"given": [_hose({"end_retention": "clamp-shells"})],
		"want": set(),
	},
	"band on cold water": {
		"given": [_hose({"end_retention": "band", "band_barred": false, "band_barred_by": ""})],
		"want": set(),
	},
	"retention not stated": {
		"given": [_hose({})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose({"end_retention": "swaged"}), _hose({"id": "H2", "end_retention": "band"})],
		"want": {object.union(_found("band"), {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hose_end_only_banded.report with input as {"hoses": tc.given}
	got == tc.want
}
