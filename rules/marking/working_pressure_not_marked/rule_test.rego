package rules.marking.working_pressure_not_marked_test

import data.rules.marking.working_pressure_not_marked

# 49 CFR 180.416(b), CFR 2015 annual edition (published), for road delivery hoses; elsewhere practice.
_hose(more) := object.union(
	{"id": "H1", "marks_stated": true, "carries_ammonia": false, "carries_liquefied_gas": false},
	more,
)

_found := {"subject": "H1", "part": "H1"}

_cases := {
	"faulty": {
		"line": {"regimes": []},
		"given": [_hose({"marked_pressure": false})],
		"want": {_found},
	},
	"twin, marked": {
		"line": {"regimes": []},
		"given": [_hose({"marked_pressure": true})],
		"want": set(),
	},
	"mark unknown": {
		"line": {"regimes": []},
		"given": [_hose({})],
		"want": set(),
	},
	"marks not stated": {
		"line": {"regimes": []},
		"given": [_hose({"marked_pressure": false, "marks_stated": false})],
		"want": set(),
	},
	"ammonia under its own law": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({"marked_pressure": false, "carries_ammonia": true})],
		"want": set(),
	},
	"ammonia elsewhere": {
		"line": {"regimes": []},
		"given": [_hose({"marked_pressure": false, "carries_ammonia": true})],
		"want": {_found},
	},
	"no ammonia, that law named": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_hose({"marked_pressure": false})],
		"want": {_found},
	},
	"under 33 CFR 154.500, which has its own rule": {
		"line": {"regimes": ["33 CFR 154.500"]},
		"given": [_hose({"marked_pressure": false})],
		"want": set(),
	},
	"under 46 CFR 153.940, which has its own rule": {
		"line": {"regimes": ["46 CFR 153.940"]},
		"given": [_hose({"marked_pressure": false})],
		"want": set(),
	},
	"under 46 CFR 38.15-5, which has its own rule": {
		"line": {"regimes": ["46 CFR 38.15-5"]},
		"given": [_hose({"marked_pressure": false})],
		"want": set(),
	},
	"liquefied gas under 33 CFR 127.1102, which has its own rule": {
		"line": {"regimes": ["33 CFR 127.1102"]},
		"given": [_hose({"marked_pressure": false, "carries_liquefied_gas": true})],
		"want": set(),
	},
	"no liquefied gas under 33 CFR 127.1102": {
		"line": {"regimes": ["33 CFR 127.1102"]},
		"given": [_hose({"marked_pressure": false})],
		"want": {_found},
	},
	"liquefied gas under 49 CFR 180.416, which has its own rule": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"marked_pressure": false, "carries_liquefied_gas": true})],
		"want": set(),
	},
	"no liquefied gas under 49 CFR 180.416": {
		"line": {"regimes": ["49 CFR 180.416"]},
		"given": [_hose({"marked_pressure": false})],
		"want": {_found},
	},
	"liquefied gas under no law": {
		"line": {"regimes": []},
		"given": [_hose({"marked_pressure": false, "carries_liquefied_gas": true})],
		"want": {_found},
	},
	"the second of two": {
		"line": {"regimes": []},
		"given": [_hose({"marked_pressure": true}), _hose({"marked_pressure": false, "id": "H2"})],
		"want": {object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"both of two": {
		"line": {"regimes": []},
		"given": [_hose({"marked_pressure": false}), _hose({"marked_pressure": false, "id": "H2"})],
		"want": {_found, object.union(_found, {"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": []},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := working_pressure_not_marked.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
