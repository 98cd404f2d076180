package rules.material.reinforcement_attacked_through_liner_test

import data.rules.material.reinforcement_attacked_through_liner

# Three accidents: polyester behind an ammonia hose liner (NTSB HAZ-12-01-SUM), stainless braid on chlorine
# (CSB 2002-04-I-MO) and on phosgene (CSB 2010-6-I-WV), all published.
_pair(more) := object.union(
	{
		"id": "P1", "part": "H1", "layer": "reinforcement", "contact": "permeated",
		"material": "PET", "fluid": "ammonia", "effect": "moisture and ammonia break polyester down", "rating": "unsuitable",
	},
	more,
)

_found := {
	"subject": "P1", "part": "H1", "layer": "reinforcement",
	"material": "PET", "fluid": "ammonia", "effect": "moisture and ammonia break polyester down",
}

_cases := {
	"polyester braid behind an ammonia liner": {"given": [_pair({})], "want": {_found}},
	"stainless braid behind a chlorine liner": {
		"given": [_pair({"fluid": "chlorine", "material": "S30400"})],
		"want": {
			object.union(
				_found,
				{"fluid": "chlorine", "material": "S30400"},
			),
		},
	},
	"cover": {"given": [_pair({"layer": "cover"})], "want": {object.union(_found, {"layer": "cover"})}},
	"wetted, another rule": {"given": [_pair({"contact": "wetted", "layer": "liner"})], "want": set()},
	"twin or unknown, nothing filed as unsuitable": {"given": [], "want": set()},
	"two hoses": {
		"given": [_pair({}), _pair({"id": "P2", "part": "H2"})],
		"want": {_found, object.union(_found, {"subject": "P2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := reinforcement_attacked_through_liner.report with input as {"pairs": {"unsuitable": tc.given}}
	got == tc.want
}

# The twin of the ammonia accident: the same liner over a braid that stands ammonia.
test_twin_with_good_braid_clears if {
	good := _pair({"material": "S30400", "rating": "suitable"})
	given := {"unsuitable": [], "limited": [], "suitable": [good], "unlisted": []}
	got := reinforcement_attacked_through_liner.report with input as {"pairs": given}
	got == set()
}
