package rules.temperature.seal_below_limit_test

import data.rules.temperature.seal_below_limit

# EN 12115 hoses and EN 14420-7 couplings are made for -20 to +65 °C, 25315 to 33815 centikelvin
# (scope of both standards, published).
_limit(more) := object.union({"id": "L1", "part": "H1", "what": "stated", "is_seal": true}, more)

_found(more) := object.union({"subject": "L1", "part": "H1", "what": "stated"}, more)

_cases := {
	"well inside": {"given": [_limit({"lowest_ck": 25315, "coldest_ck": 26315})], "want": set()},
	"at the limit": {"given": [_limit({"lowest_ck": 25315, "coldest_ck": 25315})], "want": set()},
	"a hundredth of a degree past": {
		"given": [_limit({"lowest_ck": 25315, "coldest_ck": 25314})],
		"want": {_found({"have_ck": 25315, "need_ck": 25314})},
	},
	"twin, part with a wider range": {"given": [_limit({"lowest_ck": 25314, "coldest_ck": 25314})], "want": set()},
	"limit unknown": {"given": [_limit({"coldest_ck": 25314})], "want": set()},
	"temperature unknown": {"given": [_limit({"lowest_ck": 25315})], "want": set()},
	"not applicable, not a seal": {
		"given": [_limit({"lowest_ck": 25315, "coldest_ck": 25314, "is_seal": false})],
		"want": set(),
	},
	"two subjects": {
		"given": [
			_limit({"lowest_ck": 25315, "coldest_ck": 25314}),
			_limit({"lowest_ck": 25315, "coldest_ck": 24815, "id": "L2"}),
		],
		"want": {
			_found({"have_ck": 25315, "need_ck": 25314}),
			_found({"have_ck": 25315, "need_ck": 24815, "subject": "L2"}),
		},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := seal_below_limit.report with input as {"limits": tc.given}
	got == tc.want
}
