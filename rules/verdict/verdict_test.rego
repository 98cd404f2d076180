package verdict_test

import data.verdict

_reports := {"a": {"one": {"report": {{"subject": "X"}}}, "two": {"report": set()}}, "b": {"three": {"report": set()}}}

_cases := {
	"one rule found something": {"rules": _reports, "want": {"a": {"one": {{"subject": "X"}}}}},
	"two areas": {
		"rules": object.union(_reports, {"b": {"three": {"report": {{"subject": "Y"}}}}}),
		"want": {"a": {"one": {{"subject": "X"}}}, "b": {"three": {{"subject": "Y"}}}},
	},
	"nothing found": {"rules": {"a": {"two": {"report": set()}}}, "want": {}},
	"no rules": {"rules": {}, "want": {}},
}

test_findings[note] if {
	some note, tc in _cases
	got := verdict.findings with data.rules as tc.rules
	got == tc.want
}
