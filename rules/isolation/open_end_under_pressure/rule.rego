# METADATA
# title: An end that is not in use stands open under pressure
# description: |
#   Every end that this transfer does not use is shut by something that holds the pressure. The sheet
#   is asked for it on the run, and on the vessels at its ends where what would come out is
#   flammable, toxic or corrosive.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: closures
#   scope: [under_pressure]
#   needs: [closures.form]
#   message: "{point} can come under pressure and nothing closes it"
#   action: >-
#     Close the end with a blind flange, cap or plug that is rated for the pressure, with its seal.
#   basis:
#     - document: 33 CFR 156.120
#       edition: "CFR 2015 annual edition"
#       clause: "(b)-(f)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.isolation.open_end_under_pressure

report contains {"subject": c.id, "point": c.id} if {
	some c in input.closures
	c.under_pressure
	c.form == "none"
}
