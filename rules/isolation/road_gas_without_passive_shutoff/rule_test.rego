package rules.isolation.road_gas_without_passive_shutoff_test

import data.rules.isolation.road_gas_without_passive_shutoff

# 49 CFR 173.315(n)(1)-(2), CFR 2015 annual edition (published).
_found(more) := object.union({"subject": "line"}, more)

_cases := {
	"flammable, no device": {
		"line": {"regimes": ["49 CFR 173.315"], "carries_liquefied_gas": true, "passive_shutoff": false},
		"more": {"fluids": [{"id": "product", "form": "liquefied-gas", "flammable": true, "toxic": false}]},
		"want": {_found({})},
	},
	"toxic, no device": {
		"line": {"regimes": ["49 CFR 173.315"], "carries_liquefied_gas": true, "passive_shutoff": false},
		"more": {"fluids": [{"id": "product", "form": "liquefied-gas", "flammable": false, "toxic": true}]},
		"want": {_found({})},
	},
	"harmless gas": {
		"line": {"regimes": ["49 CFR 173.315"], "carries_liquefied_gas": true, "passive_shutoff": false},
		"more": {"fluids": [{"id": "product", "form": "liquefied-gas", "flammable": false, "toxic": false}]},
		"want": set(),
	},
	"a device": {
		"line": {"regimes": ["49 CFR 173.315"], "carries_liquefied_gas": true, "passive_shutoff": true},
		"more": {"fluids": [{"id": "product", "form": "liquefied-gas", "flammable": true, "toxic": false}]},
		"want": set(),
	},
	"no liquefied gas": {
		"line": {"regimes": ["49 CFR 173.315"], "carries_liquefied_gas": false, "passive_shutoff": false},
		"more": {"fluids": [{"id": "product", "form": "liquefied-gas", "flammable": true, "toxic": false}]},
		"want": set(),
	},
	"only the pad is flammable": {
		"line": {"regimes": ["49 CFR 173.315"], "carries_liquefied_gas": true, "passive_shutoff": false},
		"more": {"fluids": [{"id": "product", "form": "compressed-gas", "flammable": true, "toxic": false}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"], "carries_liquefied_gas": true, "passive_shutoff": false},
		"more": {"fluids": [{"id": "product", "form": "liquefied-gas", "flammable": true, "toxic": false}]},
		"want": set(),
	},
	"the second fluid": {
		"line": {"regimes": ["49 CFR 173.315"], "carries_liquefied_gas": true, "passive_shutoff": false},
		"more": {"fluids": [{"id": "pad", "form": "compressed-gas", "flammable": true, "toxic": false}, {"id": "product", "form": "liquefied-gas", "flammable": true, "toxic": false}]},
		"want": {_found({})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := road_gas_without_passive_shutoff.report with input as object.union(tc.more, {"line": tc.line})
	got == tc.want
}
