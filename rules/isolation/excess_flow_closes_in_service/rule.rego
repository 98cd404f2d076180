# METADATA
# title: An excess-flow valve may close in ordinary use
# description: |
#   A valve whose closing flow is hardly above the flow of the transfer slams shut when a pump starts
#   or a valve opens quickly. People then open it slowly, wedge it or take it out. A half more than
#   the flow of the transfer is the custom.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: excess_flows
#   scope: [credited]
#   needs: [excess_flows.duty_flow_mlps]
#   absent: [excess_flows.closing_flow_mlps]
#   message: >-
#     {part} closes at {closing_mlps}, less than half as much again as the planned flow of
#     {duty_mlps}
#   action: >-
#     Lower the flow, or fit a valve with a higher closing flow that the broken line still passes.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.isolation.excess_flow_closes_in_service

report contains {
	"subject": x.id,
	"part": x.id,
	"closing_mlps": x.closing_flow_mlps,
	"duty_mlps": x.duty_flow_mlps,
} if {
	some x in input.excess_flows
	x.credited
	2 * x.closing_flow_mlps < 3 * x.duty_flow_mlps
}
