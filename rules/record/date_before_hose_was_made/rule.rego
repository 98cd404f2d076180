# METADATA
# title: A recorded date lies before the hose was made
# description: |
#   A test or inspection cannot be older than the hose. Either a date is mistyped, or the record belongs
#   to another hose.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: []
#   absent: [hoses.age_days, hoses.days_since_inspection, hoses.days_since_resistance_test, hoses.days_since_test]
#   message: "The date given for the {what} of {part} lies before it was made"
#   action: "Compare record and hose: correct the date, or find the record that belongs to this hose."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.record.date_before_hose_was_made

report contains {"subject": h.id, "part": h.id, "what": what} if {
	some h in input.hoses
	some what in {"visual inspection", "resistance measurement", "pressure test"}

	# Many hoses show month and year only.
	_days_ago(h, what) > h.age_days + 31
}

_days_ago(h, "visual inspection") := h.days_since_inspection

_days_ago(h, "resistance measurement") := h.days_since_resistance_test

_days_ago(h, "pressure test") := h.days_since_test
