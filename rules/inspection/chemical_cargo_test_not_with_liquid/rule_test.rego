package rules.inspection.chemical_cargo_test_not_with_liquid_test

import data.rules.inspection.chemical_cargo_test_not_with_liquid

# 46 CFR 153.940, CFR 2015 annual edition (published).
_it(more) := object.union({"id": "H1"}, more)

_found(more) := object.union({"subject": "H1", "part": "H1", "kind": "pneumatic"}, more)

_cases := {
	"with gas": {
		"line": {"regimes": ["46 CFR 153.940"]},
		"given": [_it({"test_kind": "pneumatic"})],
		"want": {_found({})},
	},
	"leak test": {
		"line": {"regimes": ["46 CFR 153.940"]},
		"given": [_it({"test_kind": "leak"})],
		"want": {_found({"kind": "leak"})},
	},
	"a look": {
		"line": {"regimes": ["46 CFR 153.940"]},
		"given": [_it({"test_kind": "visual"})],
		"want": {_found({"kind": "visual"})},
	},
	"twin, hydrostatic": {
		"line": {"regimes": ["46 CFR 153.940"]},
		"given": [_it({"test_kind": "hydrostatic"})],
		"want": set(),
	},
	"unknown": {
		"line": {"regimes": ["46 CFR 153.940"]},
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": []},
		"given": [_it({"test_kind": "pneumatic"})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["46 CFR 153.940"]},
		"given": [_it({"test_kind": "hydrostatic"}), _it({"id": "H2", "test_kind": "pneumatic"})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["46 CFR 153.940"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := chemical_cargo_test_not_with_liquid.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
