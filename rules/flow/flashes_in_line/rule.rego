# METADATA
# title: The liquid boils on its way through the line
# description: |
#   Where the pressure falls to the vapour pressure the liquid turns to gas in the hose: the flow
#   chokes, slugs hammer the line and the liquid chills. This is a planning figure: where a property is
#   missing there is none.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: flows
#   scope: [flow_stated]
#   needs: []
#   absent: [flows.flashing_margin_kpa]
#   message: >-
#     In run {run} the pressure falls to the vapour pressure that the liquid has at its hottest, so it
#     boils on its way
#   action: "Plan a lower flow, cool the liquid, or keep pressure on the destination."
#   basis:
#     - document: IEC 60534-2-1
#       edition: ""
#       clause: "choked flow of liquids"
#       standing: restated
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.flow.flashes_in_line

report contains {"subject": f.id, "run": f.id} if {
	some f in input.flows
	f.flow_stated
	f.flashing_margin_kpa <= 0
}
