package rules.service.oily_gas_on_oxygen_test

import data.rules.service.oily_gas_on_oxygen

# 29 CFR 1910.253(e)(5)(v), CFR 2015 annual edition (published): oil-free air or an inert gas.
_it(more) := object.union({"id": "n2", "name": "Nitrogen", "role": "test", "form": "compressed-gas", "oil_free": false}, more)

_found(more) := object.union({"subject": "n2", "name": "Nitrogen"}, more)

_law := {"regimes": []}

_cases := {
	"oily test gas": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "carries_oxygen": true}]},
		"want": {_found({})},
	},
	"oily purge gas": {
		"line": _law,
		"given": [_it({"role": "flush"})],
		"more": {"parts": [{"id": "H1", "carries_oxygen": true}]},
		"want": {_found({})},
	},
	"oily pad gas": {
		"line": _law,
		"given": [_it({"role": "pad"})],
		"more": {"parts": [{"id": "H1", "carries_oxygen": true}]},
		"want": {_found({})},
	},
	"the product itself": {
		"line": _law,
		"given": [_it({"role": "product"})],
		"more": {"parts": [{"id": "H1", "carries_oxygen": true}]},
		"want": set(),
	},
	"free of oil": {
		"line": _law,
		"given": [_it({"oil_free": true})],
		"more": {"parts": [{"id": "H1", "carries_oxygen": true}]},
		"want": set(),
	},
	"a liquid": {
		"line": _law,
		"given": [_it({"form": "liquid"})],
		"more": {"parts": [{"id": "H1", "carries_oxygen": true}]},
		"want": set(),
	},
	"no oxygen": {
		"line": _law,
		"given": [_it({})],
		"more": {"parts": [{"id": "H1", "carries_oxygen": false}]},
		"want": set(),
	},
	"two, one oily": {
		"line": _law,
		"given": [_it({"oil_free": true}), _it({"id": "air"})],
		"more": {"parts": [{"id": "H1", "carries_oxygen": true}]},
		"want": {_found({"subject": "air"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := oily_gas_on_oxygen.report with input as object.union(tc.more, {"line": tc.line, "fluids": tc.given})
	got == tc.want
}
