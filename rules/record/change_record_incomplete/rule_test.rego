package rules.record.change_record_incomplete_test

import data.rules.record.change_record_incomplete

# 29 CFR 1910.119(l)(2), CFR 2015 annual edition (published).
_line(more) := object.union({"regimes": ["29 CFR 1910.119"], "change_not_in_kind": true}, more)

_cases := {
	"no basis": {
		"given": _line({"change_states_basis": false, "change_states_effects": true, "change_states_procedures": true}),
		"want": {{"subject": "line", "missing": "the technical basis"}},
	},
	"no effects": {
		"given": _line({"change_states_basis": true, "change_states_effects": false, "change_states_procedures": true}),
		"want": {{"subject": "line", "missing": "the effects on safety and health"}},
	},
	"no procedures": {
		"given": _line({"change_states_basis": true, "change_states_effects": true, "change_states_procedures": false}),
		"want": {{"subject": "line", "missing": "the changes to procedures"}},
	},
	"nothing": {
		"given": _line({"change_states_basis": false, "change_states_effects": false, "change_states_procedures": false}),
		"want": {{"subject": "line", "missing": "the changes to procedures, the effects on safety and health, the technical basis"}},
	},
	"twin, complete": {
		"given": _line({"change_states_basis": true, "change_states_effects": true, "change_states_procedures": true}),
		"want": set(),
	},
	"unknown": {
		"given": _line({}),
		"want": set(),
	},
	"in kind": {
		"given": _line({"change_states_basis": false, "change_states_effects": true, "change_states_procedures": true, "change_not_in_kind": false}),
		"want": set(),
	},
	"another law": {
		"given": _line({"change_states_basis": false, "change_states_effects": true, "change_states_procedures": true, "regimes": ["ADR"]}),
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := change_record_incomplete.report with input as {"line": tc.given}
	got == tc.want
}
