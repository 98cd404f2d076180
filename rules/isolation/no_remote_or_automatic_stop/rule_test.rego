package rules.isolation.no_remote_or_automatic_stop_test

import data.rules.isolation.no_remote_or_automatic_stop

# Valves inside the cloud and no remote stop, as in the CSB case study of January 2018 (published).
_line(more) := object.union(
	{"hazard_in_reach": true},
	more,
)

_found := {"subject": "line"}

_cases := {
	"faulty": {
		"given": _line({"remote_stop": false, "automatic_stop": false}),
		"want": {_found},
	},
	"twin, remote stop": {
		"given": _line({"remote_stop": true, "automatic_stop": false}),
		"want": set(),
	},
	"automatic stop": {
		"given": _line({"remote_stop": false, "automatic_stop": true}),
		"want": set(),
	},
	"remote unknown": {
		"given": _line({"automatic_stop": false}),
		"want": set(),
	},
	"automatic unknown": {
		"given": _line({"remote_stop": false}),
		"want": set(),
	},
	"no hazard in reach": {
		"given": _line({"remote_stop": false, "automatic_stop": false, "hazard_in_reach": false}),
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := no_remote_or_automatic_stop.report with input as {"line": tc.given}
	got == tc.want
}
