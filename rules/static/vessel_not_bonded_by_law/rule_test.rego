package rules.static.vessel_not_bonded_by_law_test

import data.rules.static.vessel_not_bonded_by_law

# 49 CFR 177.837(b), CFR 2015 annual edition (published). Paragraph (c) has other terms for cargo tanks.
_vessel(more) := object.union(
	{
		"id": "tanker",
		"is_source": true,
		"is_target": false,
		"closed": true,
		"padded": false,
		"holds_flammable": true,
		"holds_chlorine": false,
		"holds_liquid": true,
		"has_relief": false,
		"quantity_stated": false,
	},
	more,
)

_found := {"subject": "tanker", "part": "tanker"}

_law := ["49 CFR 177.837"]

_cases := {
	"a drum": {
		"law": _law,
		"given": [_vessel({"bonded": false, "kind": "drum"})],
		"want": {_found},
	},
	"kind unknown": {
		"law": _law,
		"given": [_vessel({"bonded": false})],
		"want": {_found},
	},
	"twin, bonded": {
		"law": _law,
		"given": [_vessel({"bonded": true})],
		"want": set(),
	},
	"unknown": {
		"law": _law,
		"given": [_vessel({})],
		"want": set(),
	},
	"cargo tank, which paragraph (c) judges": {
		"law": _law,
		"given": [_vessel({"bonded": false, "kind": "tanker"})],
		"want": set(),
	},
	"nothing flammable": {
		"law": _law,
		"given": [_vessel({"bonded": false, "holds_flammable": false})],
		"want": set(),
	},
	"gas": {
		"law": _law,
		"given": [_vessel({"bonded": false, "holds_liquid": false})],
		"want": set(),
	},
	"another regime": {
		"law": ["ADR"],
		"given": [_vessel({"bonded": false})],
		"want": set(),
	},
	"no regime": {
		"law": [],
		"given": [_vessel({"bonded": false})],
		"want": set(),
	},
	"one regime of two": {
		"law": ["33 CFR 154.500", "49 CFR 177.837"],
		"given": [_vessel({"bonded": false})],
		"want": {_found},
	},
	"the second of two": {
		"law": _law,
		"given": [_vessel({"bonded": true}), _vessel({"bonded": false, "id": "tote", "kind": "tote"})],
		"want": {object.union(_found, {"subject": "tote", "part": "tote"})},
	},
	"both of two": {
		"law": _law,
		"given": [_vessel({"bonded": false}), _vessel({"bonded": false, "id": "tote"})],
		"want": {_found, object.union(_found, {"subject": "tote", "part": "tote"})},
	},
	"nothing to judge": {
		"law": _law,
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := vessel_not_bonded_by_law.report with input as {"line": {"regimes": tc.law}, "vessels": tc.given}
	got == tc.want
}
