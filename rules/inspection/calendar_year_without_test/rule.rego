# METADATA
# title: A whole calendar year has passed without a test of a waterfront gas hose
# description: |
#   The US waterfront rule wants two things at once: a test in each calendar year, and no more than
#   fifteen months between two tests.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=33 CFR 127.1102|33 CFR 127.1407"]
#   needs: [hoses.days_since_test]
#   message: "{part} was last tested on {tested_day}, so last calendar year has no test"
#   action: "Test the hose as the waterfront rule describes, and record it, before it is used."
#   basis:
#     - document: 33 CFR 127.1407
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
package rules.inspection.calendar_year_without_test

report contains {"subject": h.id, "part": h.id, "tested_day": tested} if {
	some law in {"33 CFR 127.1102", "33 CFR 127.1407"}
	law in input.line.regimes
	some h in input.hoses

	# Further back the rule of the fifteen months speaks.
	h.days_since_test < 455
	tested := input.line.as_of_day - h.days_since_test
	_year(input.line.as_of_day) - _year(tested) > 1
}

_year(day) := time.date(day * _day_ns)[0]

_day_ns := 86400000000000
