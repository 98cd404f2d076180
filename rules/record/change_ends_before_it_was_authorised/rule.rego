# METADATA
# title: A temporary change ends before the day it was authorised
# description: |
#   The record of a temporary change must hold its time and its authorisation. If the end lies before
#   the authorisation, one of the two dates is wrong.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: line
#   scope: [changed, change_temporary]
#   needs: []
#   absent: [line.change_authorised_day, line.change_until_day]
#   message: "The temporary change ends on {until_day} and was authorised on {authorised_day}"
#   action: "Correct the dates from the change record."
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(l)(2)(iv)-(v)"
#       standing: published
package rules.record.change_ends_before_it_was_authorised

report contains {
	"subject": "line",
	"until_day": input.line.change_until_day,
	"authorised_day": input.line.change_authorised_day,
} if {
	input.line.changed
	input.line.change_temporary
	input.line.change_until_day < input.line.change_authorised_day
}
