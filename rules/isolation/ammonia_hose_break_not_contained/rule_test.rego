package rules.isolation.ammonia_hose_break_not_contained_test

import data.rules.isolation.ammonia_hose_break_not_contained

# 29 CFR 1910.111(b)(12)(vii), CFR 2015 annual edition (published).
_line(more) := object.union(
	{
		"regimes": ["29 CFR 1910.111"],
		"passive_shutoff": false,
		"parts": [{"id": "H1", "kind": "hose"}],
	},
	more,
)

_found := {"subject": "line"}

# _input takes the parts out of the case, because the rule reads them beside the line.
_input(given) := {"line": object.remove(given, {"parts"}), "parts": given.parts}

_cases := {
	"faulty": {
		"given": _line({"remote_stop": false}),
		"want": {_found},
	},
	"twin, remote stop": {
		"given": _line({"remote_stop": true}),
		"want": set(),
	},
	"check valve": {
		"given": _line({
			"remote_stop": false,
			"parts": [{"id": "H1", "kind": "hose"}, {"id": "C1", "kind": "check-valve"}],
		}),
		"want": set(),
	},
	"excess-flow valve": {
		"given": _line({"remote_stop": false, "parts": [{"id": "X1", "kind": "excess-flow"}]}),
		"want": set(),
	},
	"breakaway": {
		"given": _line({"remote_stop": false, "parts": [{"id": "B1", "kind": "breakaway"}]}),
		"want": set(),
	},
	"hand valve only": {
		"given": _line({"remote_stop": false, "parts": [{"id": "V1", "kind": "valve"}]}),
		"want": {_found},
	},
	"unknown": {
		"given": _line({}),
		"want": set(),
	},
	"shut-off on separation": {
		"given": _line({"remote_stop": false, "passive_shutoff": true}),
		"want": set(),
	},
	"other law": {
		"given": _line({"remote_stop": false, "regimes": ["29 CFR 1910.110"]}),
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_hose_break_not_contained.report with input as _input(tc.given)
	got == tc.want
}
