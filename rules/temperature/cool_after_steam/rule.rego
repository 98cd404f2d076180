# METADATA
# title: A line that is steamed out is judged cold in use
# description: |
#   The steam is a case of its own: the pressure of use is judged at the heat of use, which counts in favour
#   of the line only if pressure goes on when the line has cooled to that.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: steams
#   scope: [cleaning]
#   needs: []
#   message: "{run} is steamed out: pressure goes on when it has cooled, and air or gas is let in as it cools"
#   action: "Write both into the instruction of the job."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.cool_after_steam

report contains {"subject": s.id, "run": s.run} if {
	some s in input.steams
	s.cleaning
}
