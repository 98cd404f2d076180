# METADATA
# title: The resistance of a hose for flammable fluid was not measured within a year
# description: |
#   Bonding wires break inside the hose without a trace outside. A yearly measurement is common; a
#   German guide leaves the interval to the risk assessment, with five years as the longest.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [carries_flammable]
#   needs: [hoses.days_since_resistance_test]
#   message: "The resistance of {part} was last measured {have_days} ago; once in {need_days} is common practice"
#   action: "Measure the resistance from end to end before the job, and record value and date."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
#     - document: BG RCI explosion-protection answers
#       edition: ""
#       clause: "3.5"
#       standing: published
package rules.static.resistance_record_too_old

report contains {
	"subject": h.id,
	"part": h.id,
	"have_days": h.days_since_resistance_test,
	"need_days": _longest_days,
} if {
	some h in input.hoses
	h.carries_flammable
	h.days_since_resistance_test > _longest_days
}

_longest_days := 365
