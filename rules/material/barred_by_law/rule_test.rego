package rules.material.barred_by_law_test

import data.rules.material.barred_by_law

# 49 CFR 173.315(a)(2) notes 12 and 14 keep copper and its alloys off ammonia (CFR 2015 annual edition, published).
_bar(more) := object.union(
	{
		"id": "B1", "part": "V1", "material": "C36000", "fluid": "ammonia",
		"regime": "49 CFR 173.315", "why": "copper alloy", "barred": true, "regime_applies": true,
	},
	more,
)

_found := {
	"subject": "B1", "part": "V1", "material": "C36000", "fluid": "ammonia",
	"regime": "49 CFR 173.315", "why": "copper alloy",
}

_cases := {
	"brass on ammonia": {"given": [_bar({})], "want": {_found}},
	"regime does not apply": {"given": [_bar({"regime_applies": false})], "want": set()},
	"twin, material the law accepts": {"given": [_bar({"material": "S31600", "barred": false})], "want": set()},
	"no law speaks of the fluid": {"given": [], "want": set()},
	"two parts": {
		"given": [_bar({}), _bar({"id": "B2", "part": "V2"})],
		"want": {_found, object.union(_found, {"subject": "B2", "part": "V2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := barred_by_law.report with input as {"bars": tc.given}
	got == tc.want
}
