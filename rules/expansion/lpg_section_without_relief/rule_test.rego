package rules.expansion.lpg_section_without_relief_test

import data.rules.expansion.lpg_section_without_relief

# 29 CFR 1910.110(b)(10)(xii), CFR 2015 annual edition (published): a relief valve between each pair of valves.
_section(more) := object.union(
	{
		"id": "V1 to V2",
		"run": "liquid",
		"from": "V1",
		"to": "V2",
		"liquid": true,
		"relieved": false,
		"drained": false,
		"warmed": true,
		"carries_ammonia": false,
		"carries_lpg": true,
		"weakest": "H1",
	},
	more,
)

_found := {"subject": "V1 to V2", "from": "V1", "to": "V2"}

_law := ["29 CFR 1910.110"]

_cases := {
	"faulty": {
		"law": _law,
		"given": [_section({})],
		"want": {_found},
	},
	"twin, relieved": {
		"law": _law,
		"given": [_section({"relieved": true})],
		"want": set(),
	},
	"drained, which does not excuse": {
		"law": _law,
		"given": [_section({"drained": true})],
		"want": {_found},
	},
	"the parts would hold it, which does not excuse": {
		"law": _law,
		"given": [_section({"blocked_kpa": 100, "weakest_kpa": 1600})],
		"want": {_found},
	},
	"pressures unknown": {
		"law": _law,
		"given": [_section({"warmed": false})],
		"want": {_found},
	},
	"another liquid": {
		"law": _law,
		"given": [_section({"carries_lpg": false})],
		"want": set(),
	},
	"vapour": {
		"law": _law,
		"given": [_section({"liquid": false})],
		"want": set(),
	},
	"another regime": {
		"law": ["ADR"],
		"given": [_section({})],
		"want": set(),
	},
	"no regime": {
		"law": [],
		"given": [_section({})],
		"want": set(),
	},
	"one regime of two": {
		"law": ["ADR", "29 CFR 1910.110"],
		"given": [_section({})],
		"want": {_found},
	},
	"the second of two": {
		"law": _law,
		"given": [_section({"relieved": true}), _section({"id": "V2 to V3"})],
		"want": {object.union(_found, {"subject": "V2 to V3"})},
	},
	"both of two": {
		"law": _law,
		"given": [_section({}), _section({"id": "V2 to V3"})],
		"want": {_found, object.union(_found, {"subject": "V2 to V3"})},
	},
	"nothing to judge": {
		"law": _law,
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := lpg_section_without_relief.report with input as {"line": {"regimes": tc.law}, "sections": tc.given}
	got == tc.want
}
