# METADATA
# title: A temporary change is still in place after its last day
# description: |
#   A temporary change is judged for a stated time only. What was acceptable for a week may not be for a
#   year.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: [changed, change_temporary]
#   needs: [line.change_until_day]
#   message: "The temporary change ended on {until_day}, and the line is judged on {judged_day}"
#   action: "Put the line back as it was, or have the change reviewed again with a new end date."
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(l)(2)(iv)"
#       standing: published
package rules.record.temporary_change_past_its_end

report contains {
	"subject": "line",
	"until_day": input.line.change_until_day,
	"judged_day": input.line.as_of_day,
} if {
	input.line.changed
	input.line.change_temporary
	input.line.change_until_day < input.line.as_of_day
}
