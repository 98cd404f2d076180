# METADATA
# title: Flammable liquefied gas flows and nothing outside the cloud can stop it
# description: |
#   Escaping liquefied gas makes a cloud around the valves within seconds. What stops the flow has to
#   work from outside it, or by itself.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: line
#   scope: [carries_flammable, carries_liquefied_gas, "!carries_toxic", "!hazard_in_reach", "!passive_shutoff"]
#   needs: [line.automatic_stop, line.remote_stop]
#   message: >-
#     The line carries flammable liquefied gas, and the flow can be stopped neither from outside the cloud
#     nor by itself
#   action: >-
#     Provide a remote or automatic stop, or a shut-off that works when the hose parts, and agree who does
#     what.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.isolation.flammable_liquefied_gas_without_stop

report contains {"subject": "line"} if {
	input.line.carries_flammable
	input.line.carries_liquefied_gas
	not input.line.carries_toxic
	not input.line.hazard_in_reach
	not input.line.passive_shutoff
	input.line.remote_stop == false
	input.line.automatic_stop == false
}
