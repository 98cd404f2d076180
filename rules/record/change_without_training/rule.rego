# METADATA
# title: A change came into use before people were trained
# description: |
#   The US rule on process safety wants those who work a changed process told of the change and
#   trained in it before it starts.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: [change_not_in_kind, "regime=29 CFR 1910.119"]
#   needs: [line.change_trained]
#   message: "Those who work the line were not told of the change and trained in it"
#   action: >-
#     Tell and train everyone who couples, opens or maintains the line, and record it, before it is
#     used.
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(l)(3)"
#       standing: published
package rules.record.change_without_training

report contains {"subject": "line"} if {
	"29 CFR 1910.119" in input.line.regimes
	input.line.change_not_in_kind
	input.line.change_trained == false
}
