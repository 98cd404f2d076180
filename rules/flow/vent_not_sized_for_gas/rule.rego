# METADATA
# title: Gas can blow through into a vented vessel, and nobody has shown what its vent passes
# description: |
#   Once the source has been pushed empty the gas behind the liquid rushes through the line into the
#   destination. A tank that stands open to the air is not rated for that pressure: it holds only if
#   its vent passes the gas as fast as it comes.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: flows
#   scope: [gas_follows]
#   needs: []
#   message: >-
#     Once its source is empty, gas blows through run {run} into a vessel that does not hold its
#     pressure, and what the vent of that vessel passes is not stated
#   action: >-
#     State vent_capacity from the plate or the calculation of the tank, or have something that ends the
#     transfer before the source is empty and somebody who watches it.
#   basis:
#     - document: API Std 2000, venting atmospheric and low-pressure storage tanks
#       edition: "7th edition 2014"
#       clause: other circumstances, pressure transfer blowoff
#       standing: recalled
package rules.flow.vent_not_sized_for_gas

report contains {"subject": f.id, "run": f.id} if {
	some f in input.flows
	f.gas_follows
	not f.vent_stated
}
