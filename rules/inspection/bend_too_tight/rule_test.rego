package rules.inspection.bend_too_tight_test

import data.rules.inspection.bend_too_tight

_hose(more) := object.union(
	{"id": "H1"},
	more,
)

_found := {"subject": "H1", "part": "H1", "have_mm": 149, "need_mm": 150}

_cases := {
	"one below": {
		"given": [_hose({"bend_mm": 149, "least_bend_mm": 150})],
		"want": {_found},
	},
	"twin, at the limit": {
		"given": [_hose({"bend_mm": 150, "least_bend_mm": 150})],
		"want": set(),
	},
	"above": {
		"given": [_hose({"bend_mm": 151, "least_bend_mm": 150})],
		"want": set(),
	},
	"bend unknown": {
		"given": [_hose({"least_bend_mm": 150})],
		"want": set(),
	},
	"limit unknown": {
		"given": [_hose({"bend_mm": 149})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_hose({"bend_mm": 150, "least_bend_mm": 150}),
			_hose({"bend_mm": 149, "least_bend_mm": 150, "id": "H2"}),
		],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"given": [
			_hose({"bend_mm": 149, "least_bend_mm": 150}),
			_hose({"bend_mm": 149, "least_bend_mm": 150, "id": "H2"}),
		],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := bend_too_tight.report with input as {"hoses": tc.given}
	got == tc.want
}
