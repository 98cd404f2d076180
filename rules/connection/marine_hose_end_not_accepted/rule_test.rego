package rules.connection.marine_hose_end_not_accepted_test

import data.rules.connection.marine_hose_end_not_accepted

# 33 CFR 154.500(d), CFR 2015 annual edition (published): full threaded connections, ANSI B16.5 or B16.24
# flanges, ASTM F1122 couplings.
_it(more) := object.union({"id": "J", "a": "T1", "b": "H1", "open_point": false, "family_a": "cam-groove-aa-59326", "family_b": "cam-groove-aa-59326"}, more)

_found(more) := object.union({"subject": "J", "part": "H1", "end": "cam-groove-aa-59326"}, more)

_law := {"regimes": ["33 CFR 154.500"]}

_cases := {
	"lever coupling on the hose": {
		"line": _law,
		"given": [_it({})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": {_found({})},
	},
	"hose on the other side": {
		"line": _law,
		"given": [_it({"a": "H1", "b": "T1"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": {_found({})},
	},
	"only the end of the hose counts": {
		"line": _law,
		"given": [_it({"family_b": "flange-asme-b16-5"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"a hose end astm-f1122": {
		"line": _law,
		"given": [_it({"family_b": "astm-f1122"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"a hose end thread-g": {
		"line": _law,
		"given": [_it({"family_b": "thread-g"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"a hose end thread-npsm": {
		"line": _law,
		"given": [_it({"family_b": "thread-npsm"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"a hose end thread-npt": {
		"line": _law,
		"given": [_it({"family_b": "thread-npt"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"a hose end thread-nptf": {
		"line": _law,
		"given": [_it({"family_b": "thread-nptf"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"a hose end thread-r": {
		"line": _law,
		"given": [_it({"family_b": "thread-r"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"kind unknown": {
		"line": _law,
		"given": [object.remove(_it({}), ["family_b"])],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"a joint without a hose": {
		"line": _law,
		"given": [_it({"b": "V1"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"open point": {
		"line": _law,
		"given": [_it({"open_point": true})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"another law": {
		"line": {"regimes": ["ADR"]},
		"given": [_it({})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": set(),
	},
	"two joints, one wrong": {
		"line": _law,
		"given": [_it({"family_b": "thread-npt"}), _it({"id": "K"})],
		"more": {"hoses": [{"id": "H1"}]},
		"want": {_found({"subject": "K"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := marine_hose_end_not_accepted.report with input as object.union(tc.more, {"line": tc.line, "joints": tc.given})
	got == tc.want
}
