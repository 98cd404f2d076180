package rules.service.restraint_too_weak_test

import data.rules.service.restraint_too_weak

# Nitrogen of 10 bar from a 25 mm end pushes with 635.7 N (computed; API RP 520 Part II gives the same), twice
# that at once: 1272 N.
_release(more) := object.union({"id": "nitrogen", "asphyxiant": true, "restrained": true}, more)

_found := {"subject": "nitrogen", "run": "nitrogen", "have_n": 1000, "need_n": 1272}

_cases := {
	"sized for the pressure alone": {
		"given": [_release({"restraint_n": 1000, "whip_n": 1272})],
		"want": {_found},
	},
	"one short": {
		"given": [_release({"restraint_n": 1271, "whip_n": 1272})],
		"want": {object.union(_found, {"have_n": 1271})},
	},
	"just enough": {
		"given": [_release({"restraint_n": 1272, "whip_n": 1272})],
		"want": set(),
	},
	"one more": {
		"given": [_release({"restraint_n": 1273, "whip_n": 1272})],
		"want": set(),
	},
	"twin, rated for 5 kN": {
		"given": [_release({"restraint_n": 5000, "whip_n": 1272})],
		"want": set(),
	},
	"on one hose of several": {
		"given": [_release({"restraint_n": 1000, "whip_n": 1272, "restrained": false})],
		"want": {_found},
	},
	"no restraint stated, which another rule judges": {
		"given": [_release({"whip_n": 1272, "restrained": false})],
		"want": set(),
	},
	"force unknown": {
		"given": [_release({"restraint_n": 1000})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_release({"restraint_n": 5000, "whip_n": 1272}),
			_release({"restraint_n": 1000, "whip_n": 1272, "id": "air"}),
		],
		"want": {object.union(_found, {"subject": "air", "run": "air"})},
	},
	"both of two": {
		"given": [
			_release({"restraint_n": 1000, "whip_n": 1272}),
			_release({"restraint_n": 1000, "whip_n": 1272, "id": "air"}),
		],
		"want": {_found, object.union(_found, {"subject": "air", "run": "air"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := restraint_too_weak.report with input as {"releases": tc.given}
	got == tc.want
}
