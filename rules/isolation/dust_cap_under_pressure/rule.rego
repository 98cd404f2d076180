# METADATA
# title: A dust cap closes an end under pressure
# description: |
#   A dust cap or transit plug keeps dirt out. It is not made to hold pressure, and the valve behind
#   it is then all that does.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: closures
#   scope: [under_pressure]
#   needs: []
#   absent: [closures.form]
#   message: "{point} can come under pressure and is closed with a dust cap"
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
package rules.isolation.dust_cap_under_pressure

report contains {"subject": c.id, "point": c.id} if {
	some c in input.closures
	c.under_pressure
	c.form == "dust-cap"
}
