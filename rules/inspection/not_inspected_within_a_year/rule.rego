# METADATA
# title: A hose was not looked at within a year
# description: |
#   Cuts, blisters and loose couplings are found by eye. Once a year is the least that is commonly done,
#   beside the look before each job.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: []
#   needs: [hoses.days_since_inspection]
#   message: "{part} was last inspected {have_days} ago; once in {need_days} is common practice"
#   action: "Inspect cover, couplings and visible liner before the job, and record date and findings."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.inspection.not_inspected_within_a_year

report contains {
	"subject": h.id,
	"part": h.id,
	"have_days": h.days_since_inspection,
	"need_days": _longest_days,
} if {
	some h in input.hoses
	h.days_since_inspection > _longest_days
}

_longest_days := 365
