# METADATA
# title: A pressure test with gas has no relief device of its own
# description: |
#   Gas comes from a source far above the test pressure, and the test has no other limit than a regulator,
#   which is no protective device.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: tests
#   scope: [gas, "!relief_stated"]
#   needs: []
#   message: "The test of {subject} with {fluid} names no relief device that limits it"
#   action: >-
#     Fit a relief device set no higher than the test pressure and the lesser of 345 kPa and a tenth,
#     and state it.
#   basis:
#     - document: ASME B31.3
#       edition: ""
#       clause: "345.5.2"
#       standing: recalled
package rules.relief.gas_test_without_relief

report contains {"subject": t.id, "fluid": t.fluid, "case": "pressure-test"} if {
	some t in input.tests
	t.gas
	not t.relief_stated
}
