package rules.temperature.vented_cold_below_limit_test

import data.rules.temperature.vented_cold_below_limit

# Propane boils at -42.1 °C = 23105 centikelvin (handbook value, recalled). What holds for parts holds for
# seals.
_limit(more) := object.union({"id": "H1 hose class", "part": "H1", "what": "hose class", "is_seal": false}, more)

_found := {
	"subject": "H1 hose class",
	"part": "H1",
	"what": "hose class",
	"have_ck": 23315,
	"need_ck": 23105,
}

_cases := {
	"propane in a hose good to -40 °C": {
		"gas": true,
		"given": [_limit({"vented_ck": 23105, "lowest_ck": 23315})],
		"want": {_found},
	},
	"one past": {
		"gas": true,
		"given": [_limit({"vented_ck": 23314, "lowest_ck": 23315})],
		"want": {object.union(_found, {"need_ck": 23314})},
	},
	"at the limit": {
		"gas": true,
		"given": [_limit({"vented_ck": 23315, "lowest_ck": 23315})],
		"want": set(),
	},
	"above the limit": {
		"gas": true,
		"given": [_limit({"vented_ck": 23316, "lowest_ck": 23315})],
		"want": set(),
	},
	"twin, a hose good to -50 °C": {
		"gas": true,
		"given": [_limit({"vented_ck": 23105, "lowest_ck": 22315})],
		"want": set(),
	},
	"a seal": {
		"gas": true,
		"given": [_limit({"vented_ck": 23105, "lowest_ck": 23315, "is_seal": true})],
		"want": {_found},
	},
	"limit unknown": {
		"gas": true,
		"given": [_limit({"vented_ck": 23105})],
		"want": set(),
	},
	"run without liquefied gas": {
		"gas": true,
		"given": [_limit({"lowest_ck": 23315})],
		"want": set(),
	},
	"line without liquefied gas": {
		"gas": false,
		"given": [_limit({"vented_ck": 23105, "lowest_ck": 23315})],
		"want": set(),
	},
	"the second of two": {
		"gas": true,
		"given": [
			_limit({"vented_ck": 23105, "lowest_ck": 22315}),
			_limit({"vented_ck": 23105, "lowest_ck": 23315, "id": "V1 seat", "part": "V1", "what": "seat"}),
		],
		"want": {object.union(_found, {"subject": "V1 seat", "part": "V1", "what": "seat"})},
	},
	"both of two": {
		"gas": true,
		"given": [
			_limit({"vented_ck": 23105, "lowest_ck": 23315}),
			_limit({"vented_ck": 23105, "lowest_ck": 23315, "id": "V1 seat", "part": "V1", "what": "seat"}),
		],
		"want": {_found, object.union(_found, {"subject": "V1 seat", "part": "V1", "what": "seat"})},
	},
	"nothing to judge": {
		"gas": true,
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := vented_cold_below_limit.report with input as {"line": {"carries_liquefied_gas": tc.gas}, "limits": tc.given}
	got == tc.want
}
