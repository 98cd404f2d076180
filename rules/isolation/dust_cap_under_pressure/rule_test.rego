package rules.isolation.dust_cap_under_pressure_test

import data.rules.isolation.dust_cap_under_pressure

# Practice, no source; blanks of parts not needed for a transfer: 33 CFR 156.120, CFR 2015 annual
# edition (published).
_it(more) := object.union({"id": "DT/spare", "under_pressure": true, "holds_hazard": true}, more)

_found(more) := object.union({"subject": "DT/spare", "point": "DT/spare"}, more)

_cases := {
	"faulty": {
		"given": [_it({"form": "dust-cap"})],
		"want": {_found({})},
	},
	"closed by cap": {
		"given": [_it({"form": "cap"})],
		"want": set(),
	},
	"closed by plug": {
		"given": [_it({"form": "plug"})],
		"want": set(),
	},
	"closed by blind-flange": {
		"given": [_it({"form": "blind-flange"})],
		"want": set(),
	},
	"closed by valve": {
		"given": [_it({"form": "valve"})],
		"want": set(),
	},
	"closed by piped": {
		"given": [_it({"form": "piped"})],
		"want": set(),
	},
	"closed by none": {
		"given": [_it({"form": "none"})],
		"want": set(),
	},
	"unknown": {
		"given": [_it({})],
		"want": set(),
	},
	"no pressure": {
		"given": [_it({"form": "dust-cap", "under_pressure": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [_it({"form": "plug"}), _it({"form": "dust-cap", "id": "DT/top"})],
		"want": {_found({"subject": "DT/top", "point": "DT/top"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := dust_cap_under_pressure.report with input as {"closures": tc.given}
	got == tc.want
}
