package <<.Package>>_test

import data.<<.Package>>

_hose := {"id": "C1", "part": "H1", "what": "hose", "case": "duty", "is_hose": true, "rated_kpa": 1100, "demand_kpa": 1000}

_cases := {
	"below the limit": {"change": {"rated_kpa": 1101}, "want": 0},
	"at the limit": {"change": {}, "want": 0},
	"one past the limit": {"change": {"rated_kpa": 1099}, "want": 1},
	"unknown": {"without": ["rated_kpa"], "change": {}, "want": 0},
	"not applicable": {"change": {"is_hose": false, "rated_kpa": 1}, "want": 0},
}

test_report[note] if {
	some note, tc in _cases
	known := object.remove(_hose, object.get(tc, "without", []))
	found := <<.Fault>>.report with input as {"capacities": [object.union(known, tc.change)]}
	count(found) == tc.want
}
