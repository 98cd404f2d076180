# METADATA
# title: A line for what burns is pressure tested with air or oxygen
# description: |
#   What is left of the last job, or seeps past a valve, makes an explosive mixture with it under pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: tests
#   scope: [air_or_oxygen, carries_flammable]
#   needs: []
#   message: "The test of {subject} is made with {fluid}, and the line carries what burns"
#   action: "Test with nitrogen or with a liquid."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.test_with_air_on_flammable

report contains {"subject": t.id, "case": "pressure-test", "fluid": t.fluid} if {
	some t in input.tests
	t.air_or_oxygen
	t.carries_flammable
}
