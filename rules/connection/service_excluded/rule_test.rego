package rules.connection.service_excluded_test

import data.rules.connection.service_excluded

_joint(services, open) := {
	"id": "J1", "a": "H1.inlet", "b": "V1.outlet",
	"excluded_services": services, "open_point": open,
}

_found(service) := {"subject": "J1", "a": "H1.inlet", "b": "V1.outlet", "service": service}

_cases := {
	"nothing carried is kept out": {"given": [_joint([], false)], "want": set()},
	"liquefied gas in a lever coupling": {
		"given": [_joint(["liquefied-gas"], false)],
		"want": {_found("liquefied-gas")},
	},
	"liquefied gas and steam": {
		"given": [_joint(["liquefied-gas", "steam"], false)],
		"want": {_found("liquefied-gas"), _found("steam")},
	},
	"open hatch, not a joint": {"given": [_joint(["steam"], true)], "want": set()},
	"second of two joints": {
		"given": [_joint([], false), object.union(_joint(["steam"], false), {"id": "J2"})],
		"want": {object.union(_found("steam"), {"subject": "J2"})},
	},
	"twin, flange instead of lever coupling": {
		"given": [object.union(_joint([], false), {"a": "H2.inlet"})],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := service_excluded.report with input as {"joints": tc.given}
	got == tc.want
}
