package rules.service.passive_shutoff_acts_on_separation_only_test

import data.rules.service.passive_shutoff_acts_on_separation_only

# 49 CFR 173.315(n)(2), CFR 2015 annual edition (published): complete separation.
_part(more) := object.union(
	{"id": "P1", "kind": "excess-flow"},
	more,
)

_found := {"subject": "P1", "part": "P1"}

_cases := {
	"faulty": {
		"given": [_part({"acts_on_separation_only": true})],
		"want": {_found},
	},
	"twin, acts on more": {
		"given": [_part({"acts_on_separation_only": false})],
		"want": set(),
	},
	"the second of two": {
		"given": [
			_part({"acts_on_separation_only": false}),
			_part({"acts_on_separation_only": true, "id": "P2"}),
		],
		"want": {object.union(_found, {"subject": "P2", "part": "P2"})},
	},
	"both of two": {
		"given": [
			_part({"acts_on_separation_only": true}),
			_part({"acts_on_separation_only": true, "id": "P2"}),
		],
		"want": {_found, object.union(_found, {"subject": "P2", "part": "P2"})},
	},
	"nothing to judge": {
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := passive_shutoff_acts_on_separation_only.report with input as {"parts": tc.given}
	got == tc.want
}
