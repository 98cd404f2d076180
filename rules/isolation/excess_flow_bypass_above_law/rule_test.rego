package rules.isolation.excess_flow_bypass_above_law_test

import data.rules.isolation.excess_flow_bypass_above_law

# 29 CFR 1910.111(b)(6)(vii), CFR 2015 annual edition (published); a drill No. 60 is 0.040 in
# (recalled).
_it(more) := object.union({"id": "EF1"}, more)

_found(more) := object.union({"subject": "EF1", "part": "EF1", "have_um": 1017, "need_um": 1016}, more)

_cases := {
	"one past": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_it({"bypass_um": 1017})],
		"want": {_found({})},
	},
	"at the limit": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_it({"bypass_um": 1016})],
		"want": set(),
	},
	"below": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_it({"bypass_um": 1015})],
		"want": set(),
	},
	"no hole": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_it({"bypass_um": 0})],
		"want": set(),
	},
	"unknown": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_it({})],
		"want": set(),
	},
	"another law": {
		"line": {"regimes": []},
		"given": [_it({"bypass_um": 1017})],
		"want": set(),
	},
	"the second of two": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [_it({"bypass_um": 1}), _it({"id": "EF2", "bypass_um": 1017})],
		"want": {_found({"subject": "EF2", "part": "EF2"})},
	},
	"nothing to judge": {
		"line": {"regimes": ["29 CFR 1910.111"]},
		"given": [],
		"want": set(),
	},
}

test_report[note] if {
	some note, tc in _cases
	got := excess_flow_bypass_above_law.report with input as {"line": tc.line, "excess_flows": tc.given}
	got == tc.want
}
