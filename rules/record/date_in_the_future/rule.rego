# METADATA
# title: A recorded date lies after the day of judgement
# description: |
#   A test cannot have happened yet. A mistyped year would otherwise hide an overdue test.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: []
#   absent: [hoses.age_days, hoses.days_since_inspection, hoses.days_since_resistance_test, hoses.days_since_test]
#   message: "The date given for the {what} of {part} lies after the day this line is judged"
#   action: "Correct the date from the record, or judge the line on a later day."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.record.date_in_the_future

report contains {"subject": h.id, "part": h.id, "what": what} if {
	some h in input.hoses
	some what in {"manufacture", "visual inspection", "resistance measurement", "pressure test"}
	_days_ago(h, what) < 0
}

_days_ago(h, "manufacture") := h.age_days

_days_ago(h, "visual inspection") := h.days_since_inspection

_days_ago(h, "resistance measurement") := h.days_since_resistance_test

_days_ago(h, "pressure test") := h.days_since_test
