package rules.material.limited_use_test

import data.rules.material.limited_use

# Invented pair: the rule repeats what the catalog says and adds no figure of its own.
_pair(more) := object.union(
	{
		"id": "P1", "part": "H1", "layer": "liner", "contact": "wetted",
		"material": "NBR", "fluid": "gasoline", "effect": "swells, static seal only", "rating": "unsuitable",
	},
	more,
)

_found := {
	"subject": "P1", "part": "H1", "layer": "liner",
	"material": "NBR", "fluid": "gasoline", "effect": "swells, static seal only",
}

_cases := {
	"wetted": {"given": [_pair({"rating": "limited"})], "want": {_found}},
	"permeated": {"given": [_pair({"rating": "limited", "contact": "permeated"})], "want": {_found}},
	"twin or unknown, nothing filed as limited": {"given": [], "want": set()},
	"two parts": {
		"given": [_pair({}), _pair({"id": "P2", "part": "H2"})],
		"want": {_found, object.union(_found, {"subject": "P2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := limited_use.report with input as {"pairs": {"limited": tc.given}}
	got == tc.want
}

# What is not fit at all, fit, or not listed is no business of this rule.
test_only_limited_is_read if {
	given := {"unsuitable": [_pair({})], "limited": [], "suitable": [_pair({})], "unlisted": [_pair({})]}
	got := limited_use.report with input as {"pairs": given}
	got == set()
}
