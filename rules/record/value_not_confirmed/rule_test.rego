package rules.record.value_not_confirmed_test

import data.rules.record.value_not_confirmed

_value(more) := object.union(
	{
		"id": "V1",
		"what": "working pressure of H1",
		"source": "ISO 1403",
		"clause": "Table 1",
		"used_by": ["H1", "H2"],
	},
	more,
)

_found := {
	"subject": "V1",
	"what": "working pressure of H1",
	"how": "memory",
	"where": "ISO 1403 Table 1",
	"used_by": "H1, H2",
}

_cases := {
	"recalled": {
		"given": [_value({"standing": "recalled"})],
		"want": {_found},
	},
	"recalled without a clause": {
		"given": [_value({"standing": "recalled", "clause": ""})],
		"want": {object.union(_found, {"where": "ISO 1403"})},
	},
	"practice": {
		"given": [_value({"standing": "practice"})],
		"want": {object.union(_found, {"how": "common practice", "where": "the maker's papers"})},
	},
	"stated with no document": {
		"given": [_value({"standing": "stated"})],
		"want": {object.union(_found, {
			"how": "the sheet",
			"where": "a plate, certificate or maker's paper, and name it under evidence",
		})},
	},
	"twin, the site's certificate": {
		"given": [_value({"standing": "site"})],
		"want": set(),
	},
	"published": {
		"given": [_value({"standing": "published"})],
		"want": set(),
	},
	"restated": {
		"given": [_value({"standing": "restated"})],
		"want": set(),
	},
	"computed": {
		"given": [_value({"standing": "computed"})],
		"want": set(),
	},
	"the second of two": {
		"given": [_value({"standing": "site"}), _value({"standing": "recalled", "id": "V2"})],
		"want": {object.union(_found, {"subject": "V2"})},
	},
	"both of two": {
		"given": [_value({"standing": "recalled"}), _value({"standing": "recalled", "id": "V2"})],
		"want": {_found, object.union(_found, {"subject": "V2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := value_not_confirmed.report with input as {"values": tc.given}
	got == tc.want
}
