package rules.material.ammonia_iron_kind_not_shown_test

import data.rules.material.ammonia_iron_kind_not_shown

# 29 CFR 1910.111(b)(7)(vi), CFR 2015 annual edition (published).
_it(more) := object.union(
	{"id": "V1 body", "part": "V1", "material": "DI", "layer": "body", "fluid": "Ammonia, anhydrous"},
	more,
)

_found(more) := object.union({"subject": "V1 body", "part": "V1", "layer": "body"}, more)

_law := ["29 CFR 1910.111"]

_cases := {
	"suitable": {"regimes": _law, "pairs": {"suitable": [_it({})]}, "want": {_found({})}},
	"limited": {"regimes": _law, "pairs": {"limited": [_it({})]}, "want": {_found({})}},
	"nothing known of it": {"regimes": _law, "pairs": {"unlisted": [_it({})]}, "want": {_found({})}},
	"unsuitable is judged elsewhere": {"regimes": _law, "pairs": {"unsuitable": [_it({})]}, "want": set()},
	"steel": {"regimes": _law, "pairs": {"suitable": [_it({"material": "CS"})]}, "want": set()},
	"nitrogen": {"regimes": _law, "pairs": {"suitable": [_it({"fluid": "Nitrogen"})]}, "want": set()},
	"another law": {"regimes": ["ADR"], "pairs": {"suitable": [_it({})]}, "want": set()},
	"no pairs": {"regimes": _law, "pairs": {"suitable": [], "limited": [], "unlisted": []}, "want": set()},
	"two parts, one of iron": {
		"regimes": _law,
		"pairs": {"suitable": [_it({"material": "CS"}), _it({"id": "V2 body", "part": "V2"})]},
		"want": {_found({"subject": "V2 body", "part": "V2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_iron_kind_not_shown.report with input as {"line": {"regimes": tc.regimes}, "pairs": tc.pairs}
	got == tc.want
}
