# METADATA
# title: A line for a flammable fluid is tested with air
# description: |
#   Air on the rest of a flammable fluid makes an explosive mixture under pressure. A line that was
#   never filled, or was cleaned and checked, may be tested so.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: fluids
#   scope: ["role=test", air, line.carries_flammable]
#   needs: []
#   message: "The line carries a flammable fluid and is tested with {name}"
#   action: "Test with nitrogen or liquid, or clean the line first and check that no vapour is left."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.service.air_test_on_flammable

report contains {"subject": f.id, "name": f.name} if {
	input.line.carries_flammable
	some f in input.fluids
	f.role == "test"
	f.air
}
