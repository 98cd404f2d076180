# METADATA
# title: The seal has not the size of its joint
# description: |
#   A seal too large is pinched, one too small stands in the flow or slips off its face. Both leak later
#   rather than at once.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: seals
#   scope: []
#   needs: [seals.size]
#   message: "The seal in joint {joint} is not of the size of the joint"
#   action: "Fit a seal of the size and pressure class of the joint."
#   basis:
#     - document: EN 1514-1 and ASME B16.21
#       edition: ""
#       clause: "dimensions"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.seal.size_differs

report contains {"subject": s.id, "joint": s.joint} if {
	some s in input.seals
	s.size == "differs"
}
