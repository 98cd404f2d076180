# METADATA
# title: A toxic fluid flows and nothing outside the hazard zone can stop it
# description: |
#   A leak of a toxic fluid drives people away from the valves they would have to close. Ammonia law has
#   a rule of its own.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: line
#   scope: [carries_toxic, "!hazard_in_reach", "!passive_shutoff", "!regime=29 CFR 1910.111"]
#   needs: [line.remote_stop, line.automatic_stop]
#   message: >-
#     The line carries a toxic fluid, and the flow can be stopped neither from outside the hazard zone nor
#     by itself
#   action: >-
#     Provide a remote or automatic stop, or agree in writing who closes which valve with what breathing
#     protection.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.isolation.toxic_flow_without_stop

report contains {"subject": "line"} if {
	input.line.carries_toxic
	not input.line.hazard_in_reach
	not input.line.passive_shutoff
	not "29 CFR 1910.111" in input.line.regimes
	input.line.remote_stop == false
	input.line.automatic_stop == false
}
