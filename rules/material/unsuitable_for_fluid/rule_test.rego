package rules.material.unsuitable_for_fluid_test

import data.rules.material.unsuitable_for_fluid

# Copper alloys are attacked by ammonia: 29 CFR 1910.111(b)(7)(v), CFR 2015 annual edition (published).
_pair(more) := object.union(
	{
		"id": "P1", "part": "H1", "layer": "body", "contact": "wetted",
		"material": "C36000", "fluid": "ammonia", "effect": "stress cracking", "rating": "unsuitable",
	},
	more,
)

_found := {
	"subject": "P1", "part": "H1", "layer": "body",
	"material": "C36000", "fluid": "ammonia", "effect": "stress cracking",
}

_cases := {
	"brass seat in ammonia": {"given": [_pair({})], "want": {_found}},
	"reached by permeation only, another rule": {"given": [_pair({"contact": "permeated"})], "want": set()},
	"twin or unknown, nothing filed as unsuitable": {"given": [], "want": set()},
	"two materials of one part": {
		"given": [_pair({}), _pair({"id": "P2", "layer": "seal", "material": "FKM"})],
		"want": {
			_found,
			object.union(
				_found,
				{"subject": "P2", "layer": "seal", "material": "FKM"},
			),
		},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := unsuitable_for_fluid.report with input as {"pairs": {"unsuitable": tc.given}}
	got == tc.want
}

# Limits and good ratings are filed apart and are no business of this rule.
test_only_unsuitable_is_read if {
	given := {"unsuitable": [], "limited": [_pair({})], "suitable": [_pair({})], "unlisted": [_pair({})]}
	got := unsuitable_for_fluid.report with input as {"pairs": given}
	got == set()
}
