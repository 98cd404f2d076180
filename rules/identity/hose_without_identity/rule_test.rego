package rules.identity.hose_without_identity_test

import data.rules.identity.hose_without_identity

# 49 CFR 180.416(b) and 29 CFR 1910.119(j)(4)(iv), CFR 2015 annual edition (published): number of the equipment
# in mark and record.
_it(more) := object.union({"id": "H1", "assigned_stated": false}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_law := {"regimes": ["29 CFR 1910.119"]}

_cases := {
	"no identity": {
		"line": _law,
		"given": [_it({})],
		"want": {_found({})},
	},
	"identity stated": {
		"line": _law,
		"given": [_it({"assigned_stated": true})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({})],
		"want": set(),
	},
	"no law": {
		"line": {"regimes": []},
		"given": [_it({})],
		"want": set(),
	},
	"under 33 CFR 154.500": {
		"line": {"regimes": ["ADR", "33 CFR 154.500"]},
		"given": [_it({})],
		"want": {_found({})},
	},
	"under 40 CFR 68.73": {
		"line": {"regimes": ["ADR", "40 CFR 68.73"]},
		"given": [_it({})],
		"want": {_found({})},
	},
	"under 49 CFR 180.416": {
		"line": {"regimes": ["ADR", "49 CFR 180.416"]},
		"given": [_it({})],
		"want": {_found({})},
	},
	"two, one with": {
		"line": _law,
		"given": [_it({"assigned_stated": true}), _it({"id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := hose_without_identity.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
