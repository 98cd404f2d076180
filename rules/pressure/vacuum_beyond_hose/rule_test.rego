package rules.pressure.vacuum_beyond_hose_test

import data.rules.pressure.vacuum_beyond_hose

_hose(have, need) := {
	"id": "H1",
	"vacuum_likely": true,
	"vacuum_cause": "steam that condenses in it",
	"vacuum_have_kpa": have,
	"vacuum_need_kpa": need,
}

_found(have, need) := {
	"subject": "H1",
	"part": "H1",
	"cause": "steam that condenses in it",
	"have_kpa": have,
	"need_kpa": need,
}

_cases := {
	"spare": {"given": [_hose(90, 80)], "want": set()},
	"exactly equal": {"given": [_hose(80, 80)], "want": set()},
	"one short": {"given": [_hose(79, 80)], "want": {_found(79, 80)}},
	"what it stands is unknown": {
		"given": [object.remove(_hose(0, 80), ["vacuum_have_kpa"])],
		"want": set(),
	},
	"what pulls is unknown": {
		"given": [object.remove(_hose(50, 0), ["vacuum_need_kpa"])],
		"want": set(),
	},
	"nothing pulls": {
		"given": [object.union(_hose(0, 80), {"vacuum_likely": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_hose(90, 80), object.union(_hose(30, 101), {"id": "H2"})],
		"want": {object.union(_found(30, 101), {"subject": "H2", "part": "H2"})},
	},
	"twin, a hose with a helix": {"given": [_hose(101, 101)], "want": set()},
}

test_report[note] if {
	some note, tc in _cases
	got := vacuum_beyond_hose.report with input as {"hoses": tc.given}
	got == tc.want
}
