package rules.temperature.seal_above_limit_test

import data.rules.temperature.seal_above_limit

# EN 12115 hoses and EN 14420-7 couplings are made for -20 to +65 °C, 25315 to 33815 centikelvin
# (scope of both standards, published).
_limit(more) := object.union({"id": "L1", "part": "H1", "what": "stated", "is_seal": true}, more)

_found(more) := object.union({"subject": "L1", "part": "H1", "what": "stated"}, more)

_cases := {
	"well inside": {"given": [_limit({"highest_ck": 33815, "hottest_ck": 32815})], "want": set()},
	"at the limit": {"given": [_limit({"highest_ck": 33815, "hottest_ck": 33815})], "want": set()},
	"a hundredth of a degree past": {
		"given": [_limit({"highest_ck": 33815, "hottest_ck": 33816})],
		"want": {_found({"have_ck": 33815, "need_ck": 33816})},
	},
	"twin, part with a wider range": {"given": [_limit({"highest_ck": 33816, "hottest_ck": 33816})], "want": set()},
	"limit unknown": {"given": [_limit({"hottest_ck": 33816})], "want": set()},
	"temperature unknown": {"given": [_limit({"highest_ck": 33815})], "want": set()},
	"not applicable, not a seal": {
		"given": [
			_limit({
				"highest_ck": 33815,
				"hottest_ck": 33816,
				"is_seal": false,
			}),
		],
		"want": set(),
	},
	"two subjects": {
		"given": [
			_limit({"highest_ck": 33815, "hottest_ck": 33816}),
			_limit({"highest_ck": 33815, "hottest_ck": 34315, "id": "L2"}),
		],
		"want": {
			_found({"have_ck": 33815, "need_ck": 33816}),
			_found({"have_ck": 33815, "need_ck": 34315, "subject": "L2"}),
		},
	},
}

test_report[note] if {
	some note, tc in _cases
	got := seal_above_limit.report with input as {"limits": tc.given}
	got == tc.want
}
