# METADATA
# title: An excess-flow valve never closes, however the line breaks
# description: |
#   An excess-flow valve closes only when more than its closing flow runs through it. Where the
#   broken line cannot pass that much the valve stays open, and the protection it is counted for does
#   not exist. The flow of the broken line is what the sheet states; for a liquid that does not boil
#   in the air it is worked out at duty pressure with the last hose parted at its far end.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: excess_flows
#   scope: [credited]
#   needs: [excess_flows.closing_flow_mlps, excess_flows.broken_flow_mlps]
#   message: "{part} closes at {need_mlps}; the broken line passes {have_mlps}, which must be more"
#   action: >-
#     Fit a valve that closes at less, with the closing flow on its plate, or rely on another stop.
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(6)(iii)"
#       standing: published
package rules.isolation.excess_flow_never_closes

report contains {
	"subject": x.id,
	"part": x.id,
	"have_mlps": x.broken_flow_mlps,
	"need_mlps": x.closing_flow_mlps,
} if {
	some x in input.excess_flows
	x.credited
	x.broken_flow_mlps <= x.closing_flow_mlps
}
