package rules.expansion.filled_above_transport_degree_test

import data.rules.expansion.filled_above_transport_degree

# Acetone: 92.17 % at 15 °C by the formula of ADR 4.2.1.9.2 (formula published, figure computed), rounded down
# to 921.
_vessel(more) := object.union(
	{
		"id": "tanker",
		"is_source": true,
		"is_target": false,
		"closed": true,
		"padded": false,
		"holds_flammable": false,
		"holds_chlorine": false,
		"holds_liquid": true,
		"has_relief": false,
		"quantity_stated": false,
	},
	more,
)

_found := {"subject": "tanker", "part": "tanker", "have_permille": 922, "need_permille": 921}

_law := ["ADR"]

_cases := {
	"one past the limit": {
		"law": _law,
		"given": [_vessel({"filled_permille": 922, "fill_limit_permille": 921, "kind": "tanker"})],
		"want": {_found},
	},
	"at the limit": {
		"law": _law,
		"given": [_vessel({"filled_permille": 921, "fill_limit_permille": 921, "kind": "tanker"})],
		"want": set(),
	},
	"twin, below the limit": {
		"law": _law,
		"given": [_vessel({"filled_permille": 900, "fill_limit_permille": 921, "kind": "tanker"})],
		"want": set(),
	},
	"kind unknown": {
		"law": _law,
		"given": [_vessel({"filled_permille": 922, "fill_limit_permille": 921})],
		"want": {_found},
	},
	"fill unknown": {
		"law": _law,
		"given": [_vessel({"fill_limit_permille": 921, "kind": "tanker"})],
		"want": set(),
	},
	"limit unknown": {
		"law": _law,
		"given": [_vessel({"filled_permille": 922, "kind": "tanker"})],
		"want": set(),
	},
	"a fixed tank": {
		"law": _law,
		"given": [_vessel({"filled_permille": 922, "fill_limit_permille": 921, "kind": "tank"})],
		"want": set(),
	},
	"a pressure vessel": {
		"law": _law,
		"given": [_vessel({"filled_permille": 922, "fill_limit_permille": 921, "kind": "pressure-vessel"})],
		"want": set(),
	},
	"a process vessel": {
		"law": _law,
		"given": [_vessel({"filled_permille": 922, "fill_limit_permille": 921, "kind": "process-vessel"})],
		"want": set(),
	},
	"gas": {
		"law": _law,
		"given": [
			_vessel({"filled_permille": 922, "fill_limit_permille": 921, "kind": "tanker", "holds_liquid": false}),
		],
		"want": set(),
	},
	"destination": {
		"law": _law,
		"given": [
			_vessel({"filled_permille": 922, "fill_limit_permille": 921, "kind": "tanker", "is_source": false}),
		],
		"want": set(),
	},
	"another regime": {
		"law": ["33 CFR 154.500"],
		"given": [_vessel({"filled_permille": 922, "fill_limit_permille": 921})],
		"want": set(),
	},
	"no regime": {
		"law": [],
		"given": [_vessel({"filled_permille": 922, "fill_limit_permille": 921})],
		"want": set(),
	},
	"the second of two": {
		"law": _law,
		"given": [
			_vessel({"filled_permille": 921, "fill_limit_permille": 921}),
			_vessel({"filled_permille": 922, "fill_limit_permille": 921, "id": "drum", "kind": "drum"}),
		],
		"want": {object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"both of two": {
		"law": _law,
		"given": [
			_vessel({"filled_permille": 922, "fill_limit_permille": 921}),
			_vessel({"filled_permille": 922, "fill_limit_permille": 921, "id": "drum"}),
		],
		"want": {_found, object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"nothing to judge": {
		"law": _law,
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := filled_above_transport_degree.report with input as {"line": {"regimes": tc.law}, "vessels": tc.given}
	got == tc.want
}
