package rules.static.vessel_not_bonded_test

import data.rules.static.vessel_not_bonded

# Common practice, without a source; IEC TS 60079-32-1 (recalled).
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

_law := []

_cases := {
	"faulty": {
		"law": _law,
		"given": [_vessel({"bonded": false, "kind": "drum"})],
		"want": {_found},
	},
	"twin, bonded": {
		"law": _law,
		"given": [_vessel({"bonded": true, "kind": "drum"})],
		"want": set(),
	},
	"unknown": {
		"law": _law,
		"given": [_vessel({"kind": "drum"})],
		"want": set(),
	},
	"kind unknown": {
		"law": _law,
		"given": [_vessel({"bonded": false})],
		"want": {_found},
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
	"a drum under road law, which another rule judges": {
		"law": ["49 CFR 177.837"],
		"given": [_vessel({"bonded": false, "kind": "drum"})],
		"want": set(),
	},
	"a tanker under road law": {
		"law": ["49 CFR 177.837"],
		"given": [_vessel({"bonded": false, "kind": "tanker"})],
		"want": {_found},
	},
	"kind unknown under road law": {
		"law": ["49 CFR 177.837"],
		"given": [_vessel({"bonded": false})],
		"want": set(),
	},
	"a drum under another law": {
		"law": ["ADR"],
		"given": [_vessel({"bonded": false, "kind": "drum"})],
		"want": {_found},
	},
	"the second of two": {
		"law": _law,
		"given": [_vessel({"bonded": true}), _vessel({"bonded": false, "id": "drum"})],
		"want": {object.union(_found, {"subject": "drum", "part": "drum"})},
	},
	"both of two": {
		"law": _law,
		"given": [_vessel({"bonded": false}), _vessel({"bonded": false, "id": "drum"})],
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
	got := vessel_not_bonded.report with input as {"line": {"regimes": tc.law}, "vessels": tc.given}
	got == tc.want
}
