package rules.record.in_kind_hose_without_identity_test

import data.rules.record.in_kind_hose_without_identity

# 29 CFR 1910.119(l)(1), CFR 2015 annual edition (published): all but replacements in kind are changes.
_it(more) := object.union({"id": "H1", "assigned_stated": false}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_law := {"regimes": [], "changed": true, "change_in_kind": true}

_cases := {
	"no assigned hose": {
		"line": _law,
		"given": [_it({})],
		"want": {_found({})},
	},
	"assigned hose named": {
		"line": _law,
		"given": [_it({"assigned_stated": true})],
		"want": set(),
	},
	"not in kind is judged elsewhere": {
		"line": {"changed": true, "change_in_kind": false},
		"given": [_it({})],
		"want": set(),
	},
	"in kind unknown": {
		"line": {"changed": true},
		"given": [_it({})],
		"want": set(),
	},
	"no change": {
		"line": {"changed": false, "change_in_kind": true},
		"given": [_it({})],
		"want": set(),
	},
	"two, one named": {
		"line": _law,
		"given": [_it({"assigned_stated": true}), _it({"id": "H2"})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := in_kind_hose_without_identity.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
