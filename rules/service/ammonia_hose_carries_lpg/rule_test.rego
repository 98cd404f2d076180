package rules.service.ammonia_hose_carries_lpg_test

import data.rules.service.ammonia_hose_carries_lpg

# 29 CFR 1910.110(b)(9)(i)-(ii), CFR 2015 annual edition (published): resistant to LP-gas and marked for it; the
# accident summary tells of the reverse swap (published).
_it(more) := object.union({"id": "H1", "carries_lpg": true}, more)

_found(more) := object.union({"subject": "H1", "part": "H1"}, more)

_law := {"regimes": []}

_cases := {
	"marked for ammonia only": {
		"line": _law,
		"given": [_it({"marked_ammonia": true, "marked_lpg": false})],
		"want": {_found({})},
	},
	"marked for both": {
		"line": _law,
		"given": [_it({"marked_ammonia": true, "marked_lpg": true})],
		"want": set(),
	},
	"marked for neither": {
		"line": _law,
		"given": [_it({"marked_ammonia": false, "marked_lpg": false})],
		"want": set(),
	},
	"marks unknown": {
		"line": _law,
		"given": [_it({})],
		"want": set(),
	},
	"no LP-gas": {
		"line": _law,
		"given": [_it({"marked_ammonia": true, "marked_lpg": false, "carries_lpg": false})],
		"want": set(),
	},
	"two, one wrong": {
		"line": _law,
		"given": [_it({"marked_ammonia": false, "marked_lpg": true}), _it({"id": "H2", "marked_ammonia": true, "marked_lpg": false})],
		"want": {_found({"subject": "H2", "part": "H2"})},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := ammonia_hose_carries_lpg.report with input as {"line": tc.line, "hoses": tc.given}
	got == tc.want
}
