# METADATA
# title: What a pressure test leaves behind meets a fluid that must be dry
# description: |
#   A dry gas takes the water up and carries it on; what is let down from pressure freezes it in the valve.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: tests
#   scope: ["!gas", "!dried", must_be_dry]
#   needs: []
#   message: "{fluid} is left in {subject} after the test, and {dry} must be dry"
#   action: >-
#     Let the liquid out, dry the line to a measured dew point, and say so under dried.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.material.test_liquid_left_in_dry_line

report contains {"subject": t.id, "fluid": t.fluid, "dry": t.must_be_dry_for} if {
	some t in input.tests
	not t.gas
	not t.dried
	t.must_be_dry
}
