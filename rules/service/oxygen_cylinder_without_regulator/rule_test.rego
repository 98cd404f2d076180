package rules.service.oxygen_cylinder_without_regulator_test

import data.rules.service.oxygen_cylinder_without_regulator

# 29 CFR 1910.253(b)(5)(ii)(P), CFR 2015 annual edition (published).
_found(more) := object.union({"subject": "line"}, more)

_cases := {
	"no regulator": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"fluids": [{"id": "oxygen", "fluid": "oxygen", "form": "compressed-gas"}], "parts": [{"id": "H1", "kind": "hose", "carries_oxygen": true}]},
		"want": {_found({})},
	},
	"a regulator": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"fluids": [{"id": "oxygen", "fluid": "oxygen", "form": "compressed-gas"}], "parts": [{"id": "R1", "kind": "regulator", "carries_oxygen": true}]},
		"want": set(),
	},
	"a regulator on another gas": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"fluids": [{"id": "oxygen", "fluid": "oxygen", "form": "compressed-gas"}], "parts": [{"id": "R1", "kind": "regulator", "carries_oxygen": false}]},
		"want": {_found({})},
	},
	"no oxygen": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"parts": [{"id": "H1", "kind": "hose", "carries_oxygen": true}], "fluids": [{"id": "n2", "fluid": "nitrogen", "form": "compressed-gas"}]},
		"want": set(),
	},
	"liquid oxygen": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"parts": [{"id": "H1", "kind": "hose", "carries_oxygen": true}], "fluids": [{"id": "lox", "fluid": "oxygen", "form": "cryogenic-liquid"}]},
		"want": set(),
	},
	"no part known": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"fluids": [{"id": "oxygen", "fluid": "oxygen", "form": "compressed-gas"}], "parts": []},
		"want": {_found({})},
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"more": {"fluids": [{"id": "oxygen", "fluid": "oxygen", "form": "compressed-gas"}], "parts": [{"id": "H1", "kind": "hose", "carries_oxygen": true}]},
		"want": set(),
	},
	"one of two fluids": {
		"line": {"regimes": ["29 CFR 1910.253"]},
		"more": {"parts": [{"id": "H1", "kind": "hose", "carries_oxygen": true}], "fluids": [{"id": "n2", "fluid": "nitrogen", "form": "compressed-gas"}, {"id": "oxygen", "fluid": "oxygen", "form": "compressed-gas"}]},
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := oxygen_cylinder_without_regulator.report with input as object.union(tc.more, {"line": tc.line})
	got == tc.want
}
