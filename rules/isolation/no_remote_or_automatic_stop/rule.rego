# METADATA
# title: Nothing but a person inside the hazard zone can stop the flow
# description: |
#   Where a wrong connection can react, the cloud covers the valves. In a published accident the flow
#   went on for three quarters of an hour.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: [hazard_in_reach]
#   needs: [line.remote_stop, line.automatic_stop]
#   message: >-
#     The flow can be stopped neither from outside the hazard zone nor by itself, and a point in reach
#     holds, or may hold, what reacts with this fluid
#   action: >-
#     Provide a stop that can be worked from outside the zone, or one that acts without a person, and test
#     it before the transfer.
#   basis:
#     - document: CSB case study, mixed chemicals at a Kansas plant in 2016
#       edition: "January 2018"
#       clause: "whole text"
#       standing: published
package rules.isolation.no_remote_or_automatic_stop

report contains {"subject": "line"} if {
	input.line.hazard_in_reach
	input.line.remote_stop == false
	input.line.automatic_stop == false
}
