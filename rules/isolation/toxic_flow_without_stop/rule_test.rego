package rules.isolation.toxic_flow_without_stop_test

import data.rules.isolation.toxic_flow_without_stop

# Practice, no source.
_line(more) := object.union(
	{"regimes": [], "carries_toxic": true, "hazard_in_reach": false, "passive_shutoff": false},
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
	"shut-off on separation": {
		"given": _line({"remote_stop": false, "automatic_stop": false, "passive_shutoff": true}),
		"want": set(),
	},
	"hazard in reach, judged elsewhere": {
		"given": _line({"remote_stop": false, "automatic_stop": false, "hazard_in_reach": true}),
		"want": set(),
	},
	"ammonia law, judged elsewhere": {
		"given": _line({"remote_stop": false, "automatic_stop": false, "regimes": ["29 CFR 1910.111"]}),
		"want": set(),
	},
	"not toxic": {
		"given": _line({"remote_stop": false, "automatic_stop": false, "carries_toxic": false}),
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := toxic_flow_without_stop.report with input as {"line": tc.given}
	got == tc.want
}
